import { readDate } from "#domain";
import { readTime } from "#entry";

type Fields = Readonly<Record<string, unknown>>;

/** A field by its path, "corners.2.number"; undefined where there is none. */
export function fieldAt(row: unknown, path: string): unknown {
  return path
    .split(".")
    .reduce<unknown>(
      (at, key) => (typeof at === "object" && at !== null ? (at as Fields)[key] : undefined),
      row,
    );
}

/** The row with one field changed, or taken out where the value is undefined. */
export function withField(row: Fields, path: string, value: unknown): Fields {
  return changed(row, path.split("."), value) as Fields;
}

function changed(at: unknown, [key = "", ...rest]: readonly string[], value: unknown): unknown {
  const inner = rest.length === 0 ? value : changed(fieldAt(at, key), rest, value);
  if (Array.isArray(at)) return at.map((item, index) => (String(index) === key ? inner : item));
  const fields = Object.entries(typeof at === "object" && at !== null ? at : {}).filter(
    ([name]) => name !== key,
  );
  return Object.fromEntries(inner === undefined ? fields : [...fields, [key, inner]]);
}

/** How a stored value is written into a field; what is no value leaves it empty. */
export function fieldText(value: unknown): string {
  if (value === undefined || value === null) return "";
  return typeof value === "string" ? value : JSON.stringify(value);
}

/** What a typed text may mean, the likeliest first: the text itself, a value, a date, a time in milliseconds. */
export function readingsOf(text: string): unknown[] {
  const date = readDate(text);
  const time = readTime(text);
  return [
    text,
    ...parsed(text),
    ...(date.ok ? [date.date] : []),
    ...(time.ok ? [time.ms] : []),
    ...(Number.isNaN(Date.parse(text)) ? [] : [Date.parse(text)]),
  ];
}

function parsed(text: string): unknown[] {
  try {
    return [JSON.parse(text)];
  } catch {
    return [];
  }
}
