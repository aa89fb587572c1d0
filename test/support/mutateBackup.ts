import { createHash } from "node:crypto";
import { canonicalText } from "#domain";

/** A random number from 0 to below n, whole; from a seed, so that every run is the same. */
export type Dice = (n: number) => number;

/** Dice from a seed: a 32-bit counter stirred by multiplications (mulberry32, from memory). */
export function diceFrom(seed: number): Dice {
  let state = seed >>> 0;
  return (n) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) % n;
  };
}

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
type Fields = { [key: string]: Json };

/**
 * Values no row should hold, or no row should hold everywhere, as text of JSON so that `__proto__` becomes a key of its
 * own.
 */
const hostile = [
  "null",
  "true",
  "-1",
  "0",
  "0.5",
  "1e308",
  "9007199254740993",
  '""',
  '"Infinity"',
  '"1:23.456"',
  '"2026-02-30"',
  '"__proto__"',
  '"\\ud800"',
  '"\\u0000\\u202e"',
  "[]",
  "[[]]",
  "{}",
  '{"__proto__":{"polluted":true}}',
  '{"constructor":{"prototype":{"polluted":true}}}',
  '{"toString":1}',
  '{"valueOf":1,"toString":2}',
  "1",
  "99",
  "-1e308",
  "86400001",
  "356400000",
  "4102444800000",
  "8640000000000000",
  "-62135596800000",
  '"0000-00-00"',
  '"1850-01-01"',
  '"2036-05-05"',
  '"9999-12-31"',
  '"Foo/Bar"',
  '"Etc/Nowhere+99"',
  '"+25:99"',
  '"00000000-0000-7000-8000-00000000ffff"',
];

const keys = [
  "__proto__",
  "constructor",
  "prototype",
  "toString",
  "hasOwnProperty",
  "id",
  "laps",
  "deletedAt",
];

/** A changed backup; one that was signed again has a checksum that fits its rows, as if the app had written it so. */
export interface MutatedBackup {
  readonly text: string;
  readonly isSigned: boolean;
}

/**
 * A backup after a few random changes, every other one signed again: of its signs without a checksum that could fit, or
 * of its values, with the numbers of rows mostly kept right.
 */
export function mutateBackup(text: string, dice: Dice): MutatedBackup {
  const isSigned = dice(2) === 0;
  if (!isSigned && dice(2) === 0) return { text: mutateSigns(text, dice), isSigned };
  return { text: mutateValues(text, dice, isSigned), isSigned };
}

function mutateSigns(text: string, dice: Dice): string {
  let now = text;
  for (let left = 1 + dice(3); left > 0; left -= 1) {
    const at = dice(now.length + 1);
    const end = Math.min(now.length, at + dice(40));
    const insert = [String.fromCharCode(dice(256)), now.slice(at, end), '"', "}", "\uFEFF", "\u0000"][
      dice(6)
    ];
    const cut = dice(4) === 0 ? now.length : dice(2) === 0 ? end : at;
    now = now.slice(0, at) + (insert ?? "") + now.slice(cut);
  }
  return now;
}

function mutateValues(text: string, dice: Dice, isSigned: boolean): string {
  const file = JSON.parse(text) as Fields;
  const ids = idsIn(file["tables"] ?? null);
  for (let left = 1 + dice(4); left > 0; left -= 1) {
    const tables = file["tables"];
    const isWhole = typeof tables === "object" && tables !== null;
    const holder = somewhere(isWhole && dice(8) > 0 ? tables : file, dice);
    const names = Object.keys(holder);
    const name = names[dice(Math.max(1, names.length))] ?? "0";
    change(holder as Fields, name, ids, dice);
  }
  // Now and then the head stays as it was changed, too.
  if (dice(16) > 0) putRight(file, isSigned);
  return JSON.stringify(file);
}

/** Counts, and where wanted the checksum, that fit the rows as they are now. */
function putRight(file: Fields, isSigned: boolean): void {
  const tables = file["tables"];
  if (typeof tables !== "object" || tables === null || Array.isArray(tables)) return;
  file["counts"] = Object.fromEntries(
    Object.entries(tables).map(([table, rows]) => [table, Array.isArray(rows) ? rows.length : 0]),
  );
  delete file["sha256"];
  if (isSigned) file["sha256"] = createHash("sha256").update(canonicalText(tables)).digest("hex");
}

/** Every id that stands anywhere. */
function idsIn(value: Json): string[] {
  if (typeof value !== "object" || value === null) return [];
  const own = Array.isArray(value) ? undefined : value["id"];
  const inner = Object.values(value).flatMap(idsIn);
  return typeof own === "string" ? [own, ...inner] : inner;
}

function change(holder: Fields, name: string, ids: readonly string[], dice: Dice): void {
  const value = JSON.parse(hostile[dice(hostile.length)] ?? "null") as Json;
  const old = holder[name];
  // A field that names a row mostly comes to name another one, of whatever table.
  if (typeof old === "string" && ids.includes(old) && dice(4) > 0) {
    holder[name] = ids[dice(ids.length)] ?? old;
    return;
  }
  switch (dice(6)) {
    case 0:
      if (Array.isArray(holder)) holder.splice(Number(name), 1);
      else delete holder[name];
      return;
    case 1:
      // An own key of that name, as `JSON.parse` makes it.
      Object.defineProperty(holder, Array.isArray(holder) ? name : (keys[dice(keys.length)] ?? ""), {
        value,
        enumerable: true,
        configurable: true,
        writable: true,
      });
      return;
    case 2:
      if (Array.isArray(holder) && old !== undefined) holder.push(structuredClone(old));
      else holder[name] = value;
      return;
    case 3:
      holder[name] = typeof old === "number" ? -old : typeof old === "string" ? `${old}${old}` : value;
      return;
    case 4:
      // A value like the old one, and yet another.
      holder[name] =
        typeof old === "number" ? ([old * 10, old / 2, old + 1, old * 1e6][dice(4)] ?? 0) : value;
      return;
    default:
      holder[name] = value;
  }
}

/** Any object or list inside a value, the deeper ones too. */
function somewhere(start: Json, dice: Dice): Fields | Json[] {
  let at = start as Fields | Json[];
  for (let depth = dice(6); depth > 0; depth -= 1) {
    const inner = Object.values(at).filter((value) => typeof value === "object" && value !== null);
    const next = inner[dice(Math.max(1, inner.length))];
    if (next === undefined) return at;
    at = next as typeof at;
  }
  return at;
}
