import type { MeasuredThing, WrongMeasure } from "#domain";

/**
 * Throws where a value is not a finite number, naming it: a NaN must not travel on as a figure.
 * @throws RangeError "width must be a finite number, is NaN"
 */
export function mustBeFinite(values: Readonly<Record<string, number | undefined>>): void {
  for (const [name, value] of Object.entries(values)) {
    if (value !== undefined && !Number.isFinite(value)) {
      throw new RangeError(`${name} must be a finite number, is ${value}`);
    }
  }
}

/**
 * The first measure that is not above zero; undefined when all are.
 * @example notAboveZero({ width: 0.6, distance: 0 }) // { because: "not above zero", measure: "distance", value: 0 }
 * @throws RangeError for a value that is not finite
 */
export function notAboveZero(
  values: Readonly<Partial<Record<MeasuredThing, number>>>,
): WrongMeasure | undefined {
  mustBeFinite(values);
  return firstWrong(values, "not above zero", (value) => value <= 0);
}

/** The first measure that is below zero; undefined when none is. */
export function belowZero(
  values: Readonly<Partial<Record<MeasuredThing, number>>>,
): WrongMeasure | undefined {
  mustBeFinite(values);
  return firstWrong(values, "below zero", (value) => value < 0);
}

function firstWrong(
  values: Readonly<Partial<Record<MeasuredThing, number>>>,
  because: "not above zero" | "below zero",
  isWrong: (value: number) => boolean,
): WrongMeasure | undefined {
  const bad = (Object.entries(values) as [MeasuredThing, number][]).find(([, value]) => isWrong(value));
  return bad && { because, measure: bad[0], value: bad[1] };
}

/** Throws where a value is not a finite number above zero, naming it. */
export function mustBeAboveZero(values: Readonly<Record<string, number>>): void {
  mustBeFinite(values);
  for (const [name, value] of Object.entries(values)) {
    if (value <= 0) throw new RangeError(`${name} must be more than 0, is ${value}`);
  }
}
