import { formatLapTime, formatSeconds, lapRange, shownPart } from "#domain";
import { sectorOf } from "./columns.ts";
import { shown, type TableCells } from "./tableCells.ts";
import type { TableForm } from "./tableForm.ts";
import { readTableTime, type TableTime } from "./tableTime.ts";

export interface TableLapTimes {
  readonly ms?: number;
  readonly decimals?: number;
  readonly sectors?: readonly number[];
  readonly sectorDecimals?: readonly number[];
}

const noTime = /^(no time|none|dnf|[-–—])$/i;
const halfOfLastDigit = ({ decimals }: TableTime) => 10 ** (3 - decimals) / 2;

/**
 * The lap time and sectors of a row. Sectors alone add up to the time; beside one, their sum may lie 2 ms plus half of
 * each last digit from it. "no time" or a remark alone makes a lap without a time.
 * @returns undefined where the cells have kept the problem
 */
export function readLapTimes(
  cells: TableCells,
  form: TableForm,
  hasRemarks: boolean,
): TableLapTimes | undefined {
  const typed = cells.raw("time").trim();
  const isUntimed = noTime.test(typed);
  const written = isUntimed ? undefined : cells.take("time", (cell) => readTableTime(cell, form));
  if (written === undefined && typed !== "" && !isUntimed) return undefined;
  const time = withAllDigits(cells, form, written);
  const sectors = readSectors(cells, form);
  if (sectors === undefined) return undefined;
  if (sectors.length === 0) {
    if (time !== undefined) return { ms: time.ms, decimals: time.decimals };
    if (isUntimed || hasRemarks) return {};
    return cells.refuse("The lap time is missing.", "Write “no time” for a lap without one.");
  }
  if (isUntimed)
    return cells.refuse("The lap has sectors and no time.", "Leave the sectors out, or write the lap time.");
  if (time === undefined && sectors.length < sectorsOf(form).length)
    return cells.refuse(
      `The lap time is missing, and so is sector ${sectors.length + 1}.`,
      "Write the lap time, or all sectors.",
    );
  const each = { sectors: sectors.map(({ ms }) => ms), sectorDecimals: sectors.map((one) => one.decimals) };
  const sum = each.sectors.reduce((total, ms) => total + ms, 0);
  const decimals = Math.min(...each.sectorDecimals);
  if (sum > lapRange.most)
    return cells.refuse("The sectors add up to over 24 hours.", "Put right the one that is wrong.");
  if (time === undefined) return { ms: sum, decimals, ...each };
  const most = 2 + [time, ...sectors].reduce((total, one) => total + halfOfLastDigit(one), 0);
  if (Math.abs(sum - time.ms) <= most) return { ms: time.ms, decimals: time.decimals, ...each };
  return cells.refuse(
    `The sectors add up to ${formatLapTime(sum, decimals)}, ${formatSeconds(Math.abs(sum - time.ms))} ${sum > time.ms ? "more" : "less"} than ${shown(typed)}.`,
    "Put right the one that is wrong, or leave the sectors out.",
  );
}

/** The lap time with every digit it counts as, where the table says so: it must be the same time, cut shorter. */
function withAllDigits(
  cells: TableCells,
  form: TableForm,
  time: TableTime | undefined,
): TableTime | undefined {
  const counted = cells.take("counted", (cell) => readTableTime(cell, { ...form, wholeNumbers: "seconds" }));
  if (time === undefined || counted === undefined) return time;
  if (shownPart(counted.ms, time.decimals) === time.ms) return { ...time, ms: counted.ms };
  return cells.refuse(
    `The lap time ${shown(cells.raw("time").trim())} and the seconds it counts as, ${shown(cells.raw("counted").trim())}, are not the same time.`,
    "Put right the one that is wrong, or leave the column of seconds out.",
  );
}

const sectorsOf = ({ columns }: TableForm) => columns.flatMap((kind) => sectorOf(kind) ?? []);

/** The sectors from the first to the last that is filled in; undefined where one between them cannot be read. */
function readSectors(cells: TableCells, form: TableForm): readonly TableTime[] | undefined {
  const last = Math.max(
    0,
    ...sectorsOf(form).filter((number) => cells.raw(`sector ${number}`).trim() !== ""),
  );
  const read: TableTime[] = [];
  for (let number = 1; number <= last; number++) {
    const kind = `sector ${number}` as const;
    if (cells.raw(kind).trim() === "")
      return cells.refuse(`Sector ${number} is missing.`, "Fill in all sectors or none.");
    const time = cells.take(kind, (cell) => readTableTime(cell, form));
    if (time === undefined) return undefined;
    read.push(time);
  }
  return read;
}
