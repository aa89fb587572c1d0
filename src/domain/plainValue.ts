/** Deeper than any row, and less deep than `canonicalText` goes. */
const deepest = 24;

/**
 * Any stored value as JSON can hold it. What JSON does not hold (NaN, a date, bytes, something that holds itself) becomes its
 * text; absent fields stay absent. A field with a name that every object has of itself gets another.
 */
export function plainValue(value: unknown): unknown {
  return plain(value, []);
}

function plain(value: unknown, around: readonly unknown[]): unknown {
  if (typeof value === "number") return Number.isFinite(value) ? value : String(value);
  if (value === null || value === undefined || typeof value === "string" || typeof value === "boolean")
    return value;
  if (value instanceof Date)
    return Number.isFinite(value.getTime()) ? value.toISOString() : "no instant of a calendar";
  const kind = Object.prototype.toString.call(value);
  if (typeof value !== "object") return String(value);
  if (around.includes(value) || around.length >= deepest) return kind;
  const inside = [...around, value];
  if (Array.isArray(value)) return Array.from(value, (item) => plain(item, inside) ?? null);
  if (kind !== "[object Object]") return kind;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [named(key), plain(inner, inside)]));
}

/** A name that every object has of itself is none for a field. */
const named = (key: string) => (key in Object.prototype ? `field ${key}` : key);
