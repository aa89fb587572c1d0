import { dump, LedgerFault, typedBeside } from "#db";
import { type AllRows, type CalendarDate, comboName, type Id } from "#domain";
import { fetchFile } from "#files";
import type { Errand } from "./errand.ts";
import { packRows } from "./packRows.ts";
import { readSource } from "./readSource.ts";

export interface TypedInDemo {
  /** Where the demo lies as it came. */
  readonly address: string;
}

/** What the driver typed in the demo, and the small backup that moves it elsewhere. */
export interface TypedInDemoFound {
  readonly laps: number;
  /** Sessions with laps the driver typed, the latest first. */
  readonly sessions: readonly {
    readonly id: Id;
    readonly date: CalendarDate;
    readonly combo: string;
    readonly laps: number;
  }[];
  /** Targets, rig settings, runs written as a whole and the like. */
  readonly others: number;
  /** Rows and laps of the demo itself that the driver changed; they stay the demo's. */
  readonly changed: number;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** Tells apart what was typed in the demo from what it came with. Nothing is changed. */
export const typedInDemo: Errand<TypedInDemo, TypedInDemoFound> = async ({ address }, { book, tell }) => {
  tell({ step: "Looking for what you typed in the demo" });
  const file = await fetchFile(address);
  const read = file.ok ? await readSource(file.source) : file;
  if (!read.ok)
    throw new LedgerFault(
      "failed",
      `Demo not removed: it could not be told what you typed in it. ${read.problem.wrong} ${read.problem.right}`,
    );
  const rows = await dump(book);
  const { part, laps, others, changed } = typedBeside(rows, read.alone.rows);
  const sessions = part.sessions
    .filter(({ id }) => laps.has(id))
    .sort((a, b) => b.startedAt - a.startedAt)
    .map(({ id, date, comboId }) => ({ id, date, combo: nameOf(part, comboId), laps: laps.get(id) ?? 0 }));
  return {
    laps: sessions.reduce((sum, session) => sum + session.laps, 0),
    sessions,
    others,
    changed,
    bytes: await packRows(part, "Typed in the demo"),
  };
};

function nameOf({ combos, cars, tracks, layouts }: AllRows, comboId: Id): string {
  const combo = combos.find(({ id }) => id === comboId);
  const car = cars.find(({ id }) => id === combo?.carId);
  const layout = layouts.find(({ id }) => id === combo?.layoutId);
  const track = tracks.find(({ id }) => id === layout?.trackId);
  return car && layout && track ? comboName({ car, layout, track }) : "";
}
