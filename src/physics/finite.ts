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

type Measures = Readonly<Partial<Record<MeasuredThing, number>>>;

/**
 * The first measure that is not above zero; undefined when all are.
 * @example notAboveZero({ width: 0.6, distance: 0 }) // { because: "not above zero", measure: "distance", value: 0 }
 * @throws RangeError for a value that is not finite
 */
export function notAboveZero(measures: Measures): WrongMeasure | undefined {
  const wrong = firstOf(measures, (value) => value <= 0);
  return wrong && { because: "not above zero", ...wrong };
}

/**
 * The first measure that is below zero; undefined when none is.
 * @throws RangeError for a value that is not finite
 */
export function belowZero(measures: Measures): WrongMeasure | undefined {
  const wrong = firstOf(measures, (value) => value < 0);
  return wrong && { because: "below zero", ...wrong };
}

function firstOf(measures: Measures, isWrong: (value: number) => boolean) {
  mustBeFinite(measures);
  return (Object.entries(measures) as [MeasuredThing, number][])
    .map(([measure, value]) => ({ measure, value }))
    .find(({ value }) => isWrong(value));
}

/** Throws where a value is not a finite number above zero, naming it. */
export function mustBeAboveZero(values: Readonly<Record<string, number>>): void {
  mustBeFinite(values);
  for (const [name, value] of Object.entries(values)) {
    if (value <= 0) throw new RangeError(`${name} must be more than 0, is ${value}`);
  }
}
