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

/** Values no row should hold, as text of JSON so that `__proto__` becomes a key of its own. */
const hostile = [
  "null",
  "true",
  "-1",
  "0",
  "0.5",
  "1e308",
  "9007199254740993",
  '""',
  '"NaN"',
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

/** A backup's text after a few random changes: of its signs, or of its values with the numbers of rows kept right. */
export function mutateBackup(text: string, dice: Dice): string {
  return dice(3) === 0 ? mutateSigns(text, dice) : mutateValues(text, dice);
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

function mutateValues(text: string, dice: Dice): string {
  const file = JSON.parse(text) as { [key: string]: Json };
  for (let left = 1 + dice(4); left > 0; left -= 1) {
    const tables = file["tables"];
    const isWhole = typeof tables === "object" && tables !== null;
    const holder = somewhere(isWhole && dice(8) > 0 ? tables : file, dice);
    const names = Object.keys(holder);
    const name = names[dice(Math.max(1, names.length))] ?? "0";
    change(holder as { [key: string]: Json }, name, dice);
  }
  const tables = file["tables"];
  if (typeof tables === "object" && tables !== null && !Array.isArray(tables)) {
    delete file["sha256"];
    file["counts"] = Object.fromEntries(
      Object.entries(tables).map(([table, rows]) => [table, Array.isArray(rows) ? rows.length : 0]),
    );
  }
  return JSON.stringify(file);
}

function change(holder: { [key: string]: Json }, name: string, dice: Dice): void {
  const value = JSON.parse(hostile[dice(hostile.length)] ?? "null") as Json;
  const old = holder[name];
  switch (dice(5)) {
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
    default:
      holder[name] = value;
  }
}

/** Any object or list inside a value, the deeper ones too. */
function somewhere(start: Json, dice: Dice): { [key: string]: Json } | Json[] {
  let at = start as { [key: string]: Json } | Json[];
  for (let depth = dice(6); depth > 0; depth -= 1) {
    const inner = Object.values(at).filter((value) => typeof value === "object" && value !== null);
    const next = inner[dice(Math.max(1, inner.length))];
    if (next === undefined) return at;
    at = next as typeof at;
  }
  return at;
}
