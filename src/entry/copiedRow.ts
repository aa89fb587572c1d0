import { betweenSigns, countedAs, decimalsOf, lapSigns, remarkKinds, shownPart } from "#domain";
import { readFullForm } from "./fullForms.ts";
import { strokeAt } from "./note.ts";
import { withRemark } from "./unitOrSpin.ts";
import { wholeTime } from "./wholeTime.ts";
import type { ReadTime } from "./word.ts";

const fewestCells = 4;
const hidden = /^edit lap \d+:\s*/i;
const time = /^(?:\d+:)*\d+(?:\.\d{1,3})?$/;
const difference = String.raw`[+\-−±](?:\d+:)*\d+(?:\.\d+)?`;
const differences = new RegExp(
  `^${difference}(?: (?:faster|slower|the same|level))?\\s*(?:${difference}\\s*(?:to target)?)?$`,
);
const said = new Set<string>(Object.values(lapSigns));
const beforeCounted = `${countedAs} `;
const head = /^\s*lap\t\s*time\t/;
const sectorsAlone = /^\s*sectors \d/;
const fewestColumns = 3;
const hasWord = /\p{L}{3}/u;

export interface CopiedRow {
  /** The lap as the line a driver would type. */
  readonly line: string;
  /** The same with no nought behind its sectors that they do not need; undefined where that is no other line. */
  readonly lineWithoutNoughts: string | undefined;
  /** How many decimals of its time are known; undefined where it has none. */
  readonly decimals: number | undefined;
  /** What the row said besides, and no line can. */
  readonly isNotBest: boolean;
  readonly isFromMemory: boolean;
}

/**
 * A row copied from the ledger's table of laps: number, time, differences, sectors, remarks in words, the note behind its
 * stroke; with or without the words for those who listen.
 * @returns undefined where the text is no such row
 */
export function readCopiedRow(row: string): CopiedRow | undefined {
  const cells = row.split("\t").map((cell) => cell.trim());
  const [number = "", typed = "", ...others] = cells;
  if (cells.length < fewestCells || !/^\d{1,6}$/.test(number)) return undefined;
  const lapTime = typed.replace(hidden, "");
  const isUntimed = lapTime === "no time";
  if (!isUntimed && !time.test(lapTime)) return undefined;
  const figures = others.filter((cell) => differences.test(cell) || time.test(cell) || cell === "");
  const words = others.filter((cell) => !figures.includes(cell));
  if (words.length > 1 || (words.length === 1 && words[0] !== others.at(-1))) return undefined;
  const sectors = figures.filter((cell) => time.test(cell));
  if (isUntimed && sectors.length > 0) return undefined;
  const { signs, note } = signsAndNote(words[0] ?? "");
  const shown = isUntimed ? undefined : timeIn(lapTime);
  const counted = timeIn(signs.find((sign) => sign.startsWith(beforeCounted))?.slice(beforeCounted.length));
  if (counted !== undefined && shown?.ms !== shownPart(counted.ms, shown?.decimals ?? 3)) return undefined;
  const letters = lettersOf(signs.filter((sign) => counted === undefined || !sign.startsWith(beforeCounted)));
  if (letters === undefined || (isUntimed && letters.length === 0)) return undefined;
  const all = counted ?? shown;
  const whole = all === undefined ? withMinute(lapTime) : wholeTime(all.ms, all.decimals);
  const lineOf = (sectorsTyped: readonly string[]) =>
    `${letters.reduce(withRemark, (isUntimed ? [] : [whole, ...sectorsTyped]).join(" "))}${note}`;
  const line = lineOf(sectors.map((sector) => asTyped(sector)));
  const withoutNoughts = lineOf(sectors.map((sector) => asTyped(sector, decimalsOf)));
  return {
    line,
    lineWithoutNoughts: withoutNoughts === line ? undefined : withoutNoughts,
    decimals: shown?.decimals,
    isNotBest: signs.includes(lapSigns.notBest),
    isFromMemory: signs.includes(lapSigns.fromMemory),
  };
}

/** Why a line of a copied table holds no lap of its own; undefined for any other line. */
export function whyNoLap(line: string): { readonly wrong: string; readonly right: string } | undefined {
  if (head.test(line))
    return { wrong: "These are the names of the columns, not a lap.", right: "Copy the rows below them." };
  if (sectorsAlone.test(line))
    return {
      wrong: "These are the sectors of the lap above.",
      right: "Write them after its time: 1:23.420 27.1 31.42 24.9.",
    };
  return undefined;
}

/** Under a minute a printed time has no minute, and would be completed. */
function withMinute(lapTime: string): string {
  return lapTime.includes(":") ? lapTime : `0:${/^\d(?!\d)/.test(lapTime) ? "0" : ""}${lapTime}`;
}

/** A printed time as it is read; undefined where it is none. */
function timeIn(printed = ""): ReadTime | undefined {
  const read = readFullForm(withMinute(printed));
  return read?.ok ? read : undefined;
}

/** A printed sector as a driver would type it, with the decimals it has or with others. */
function asTyped(sector: string, decimals?: (ms: number) => number): string {
  const read = timeIn(sector);
  return read === undefined ? sector : wholeTime(read.ms, decimals?.(read.ms) ?? read.decimals);
}

function signsAndNote(cell: string): { readonly signs: readonly string[]; readonly note: string } {
  const stroke = strokeAt(cell);
  const signs = cell.slice(0, stroke).split(betweenSigns);
  return {
    signs: signs.map((sign) => sign.trim()),
    note: stroke === cell.length ? "" : ` ${cell.slice(stroke)}`,
  };
}

/** The remarks among what a row says, as letters; undefined where a word is none of the ledger's. */
function lettersOf(signs: readonly string[]): readonly string[] | undefined {
  const parts = signs
    .flatMap((sign) => (said.has(sign) ? [] : sign.split(",")))
    .map((part) => part.trim())
    .filter(Boolean);
  const letters: string[] = [];
  for (const part of parts) {
    const about = remarkKinds.find(({ word }) => word === part);
    const corner = /^corner (\d{1,3})$/.exec(part)?.[1];
    const last = letters.at(-1);
    if (about !== undefined) letters.push(about.letter);
    else if (corner !== undefined && last !== undefined && !last.includes("@"))
      letters[letters.length - 1] = `${last}@${corner}`;
    else return undefined;
  }
  return letters;
}

/** Why a line that cannot be read holds no lap, where it is a row of some other table; undefined for any other line. */
export function whyNoRow(line: string): { readonly wrong: string; readonly right: string } | undefined {
  const row = line.slice(0, strokeAt(line));
  const isInColumns = row.split("\t").length >= fewestColumns || row.split(/[,;]/).length > fewestColumns;
  if (!isInColumns || !hasWord.test(row)) return undefined;
  return {
    wrong: "This is a row of a table with several columns, not a lap alone.",
    right: "Import a table of laps under Data, Import laps; here a line is one lap.",
  };
}
