/** Values as the figures take them: a plain or a typed array, never changed in place. */
export type Numbers = ArrayLike<number>;

/**
 * Refuses a value that is not a finite number.
 * @throws RangeError that names the value and its place
 */
export function requireFinite(values: Numbers, name = "values"): void {
  for (let i = 0; i < values.length; i++) requireNumberAt(values[i], name, i);
}

/**
 * Refuses a value of a list that is not a finite number; the name is put together only when it is needed.
 * @throws RangeError that names the value and its place
 */
export function requireNumberAt(
  value: number | undefined,
  name: string,
  index: number,
): asserts value is number {
  if (!Number.isFinite(value)) requireNumber(value, `${name}[${index}]`);
}

/**
 * Refuses a single argument that is not a finite number.
 * @throws RangeError that names the argument and what it was
 */
export function requireNumber(value: number | undefined, name: string): asserts value is number {
  if (!Number.isFinite(value)) throw new RangeError(`${name} is ${value}: a finite number is needed`);
}

/**
 * Refuses a confidence or level outside the open interval from 0 to 1.
 * @throws RangeError that names the argument and what it was
 */
export function requireFraction(value: number, name: string): void {
  if (!(value > 0 && value < 1))
    throw new RangeError(`${name} is ${value}: a fraction between 0 and 1 is needed`);
}

/**
 * Refuses two columns of different length.
 * @throws RangeError that gives both lengths
 */
export function requireSameLength(x: Numbers, y: Numbers): void {
  if (x.length !== y.length) {
    throw new RangeError(`x has ${x.length} values and y has ${y.length}: as many of each are needed`);
  }
}
