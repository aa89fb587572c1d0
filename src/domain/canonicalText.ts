/** Deeper than any row of a logbook; a file nested deeper is not one. */
const deepest = 32;

/**
 * One text for one value, whatever order its fields were written in: JSON with the keys of every object sorted.
 * Absent fields leave no trace. Throws RangeError for a value nested deeper than 32 levels.
 * @example canonicalText({ b: 1, a: [2] }) // '{"a":[2],"b":1}'
 */
export function canonicalText(value: unknown): string {
  return write(value, 0);
}

function write(value: unknown, depth: number): string {
  if (depth > deepest) throw new RangeError(`nested deeper than ${deepest} levels`);
  if (Array.isArray(value)) return `[${value.map((item) => write(item, depth + 1)).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "null";
  const fields = Object.entries(value)
    .filter(([, field]) => field !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, field]) => `${JSON.stringify(key)}:${write(field, depth + 1)}`);
  return `{${fields.join(",")}}`;
}
