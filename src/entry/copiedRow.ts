import { remarkKinds } from "#domain";
import { strokeAt } from "./note.ts";
import { withRemark } from "./unitOrSpin.ts";

const fewestCells = 4;
const hidden = /^edit lap \d+:\s*/i;
const time = /^(?:\d+:)*\d+(?:\.\d{1,3})?$/;
const difference = String.raw`[+\-−±](?:\d+:)*\d+(?:\.\d+)?`;
const differences = new RegExp(
  `^${difference}(?: (?:faster|slower|level))?\\s*(?:${difference}\\s*(?:to target)?)?$`,
);
/** What the ledger says of a lap besides its remarks. */
const said = new Set(["PB", "was PB", "not a PB", "from memory"]);
const head = /^\s*lap\t\s*time\t/;
const sectorsAlone = /^\s*sectors \d/;
const fewestColumns = 3;
const hasWord = /\p{L}{3}/u;

/**
 * A row copied from the ledger's table of laps, as the line a driver would type: number, time, differences, sectors,
 * remarks in words, the note behind its stroke; with or without the words for those who listen.
 * @returns the line, or undefined where the text is no such row
 */
export function lineOfCopiedRow(row: string): string | undefined {
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
  const { letters, note } = lettersOf(words[0] ?? "");
  if (letters === undefined || (isUntimed && letters.length === 0)) return undefined;
  const times = isUntimed ? [] : [withMinute(lapTime), ...sectors];
  return `${letters.reduce(withRemark, times.join(" "))}${note}`;
}

/** Why a line of a copied table holds no lap of its own; undefined for any other line. */
export function whyNoLap(line: string): { readonly wrong: string; readonly right: string } | undefined {
  if (head.test(line))
    return { wrong: "These are the names of the columns, not a lap.", right: "Copy the rows below them." };
  if (sectorsAlone.test(line))
    return {
      wrong: "These are the sectors of the lap above.",
      right: "Write them behind its time: 1:23.420 27.1 31.42 24.9.",
    };
  return undefined;
}

/** Under a minute a printed time has no minute, and would be completed. */
function withMinute(lapTime: string): string {
  return lapTime.includes(":") ? lapTime : `0:${/^\d(?!\d)/.test(lapTime) ? "0" : ""}${lapTime}`;
}

function lettersOf(cell: string): { readonly letters: readonly string[] | undefined; readonly note: string } {
  const stroke = strokeAt(cell);
  const note = stroke === cell.length ? "" : ` ${cell.slice(stroke)}`;
  const parts = cell
    .slice(0, stroke)
    .split(" · ")
    .flatMap((part) => (said.has(part.trim()) ? [] : part.split(",")))
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
    else return { letters: undefined, note };
  }
  return { letters, note };
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
