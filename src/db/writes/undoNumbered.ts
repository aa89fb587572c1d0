import type { TableName } from "#domain";
import { isSame } from "../patch.ts";

/** A part of a row that is known by its number. */
interface Numbered {
  readonly number: number;
}
type Parts = readonly Numbered[];

const lists: Partial<Readonly<Record<TableName, string>>> = { layouts: "corners", combos: "lowestSpeeds" };

/** Whether a field is a list of parts each of which is taken back by itself. */
export function isNumbered(table: TableName, field: string): boolean {
  return lists[table] === field;
}

/**
 * Takes back what a change did to a list of numbered parts, but for the parts that were changed again since.
 * @param now the list as it stands; absent it holds nothing
 * @returns the list, absent where it holds nothing and was absent before, and whether all of it could be taken back
 */
export function undoNumbered(
  before: unknown,
  after: unknown,
  now: unknown,
): { readonly list: Parts | undefined; readonly isWhole: boolean } {
  const [was, then, parts] = [byNumber(before), byNumber(after), byNumber(now)];
  let isWhole = true;
  for (const number of new Set([...was.keys(), ...then.keys()])) {
    const [old, made] = [was.get(number), then.get(number)];
    if (isSame(old, made)) continue;
    if (!isSame(parts.get(number), made)) isWhole = false;
    else if (old === undefined) parts.delete(number);
    else parts.set(number, old);
  }
  const list = [...parts.values()].sort((a, b) => a.number - b.number);
  return { list: list.length === 0 && before === undefined ? undefined : list, isWhole };
}

function byNumber(list: unknown): Map<number, Numbered> {
  return new Map(((list ?? []) as Parts).map((part) => [part.number, part]));
}
