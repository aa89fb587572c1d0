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
 * The first value that is not above zero, as a sentence; undefined when all are.
 * @example notAboveZero({ width: 0.6, distance: 0 }) // "distance must be more than 0, is 0"
 * @throws RangeError for a value that is not finite
 */
export function notAboveZero(values: Readonly<Record<string, number>>): string | undefined {
  mustBeFinite(values);
  const bad = Object.entries(values).find(([, value]) => value <= 0);
  return bad && `${bad[0]} must be more than 0, is ${bad[1]}`;
}

/** Throws where a value is not a finite number above zero, naming it. */
export function mustBeAboveZero(values: Readonly<Record<string, number>>): void {
  const wrong = notAboveZero(values);
  if (wrong !== undefined) throw new RangeError(wrong);
}
