import {
  type BadRow,
  type BothEdited,
  countChanges,
  dump,
  editedOnBoth,
  type MergeCounts,
  mergeRows,
} from "#db";
import { type AllRows, everyTable, type Reading, type Stamped, type TableName } from "#domain";
import type { Errand } from "./errand.ts";
import { rowsBeside } from "./readSource.ts";

/** Rows listed at most; how many there are is said beside them. */
const mostListed = 200;

export interface Look {
  readonly source: Blob;
}

/** Rows of one table of a file. */
export interface Held {
  readonly live: number;
  readonly deleted: number;
}

/** A bad row as it is named. The row itself stays behind: it may be nested deeper than can be handed to the page. */
export type NamedBad = Omit<BadRow, "row">;

/** Some of a list, and how many there are in all. */
export interface Listed<T> {
  readonly first: readonly T[];
  readonly all: number;
}

/** What a file holds, and what merging it into the open logbook would do; nothing has been written. */
export interface Preview {
  readonly title: string;
  readonly madeAt: number;
  readonly isVerified: boolean;
  readonly holds: { readonly [T in TableName | "laps"]: Held };
  /** Rows left out of a logbook of its own. */
  readonly bad: Listed<NamedBad>;
  readonly merging: {
    /** Rows left out of a merge: one whose parent the open logbook has is not among them. */
    readonly bad: Listed<NamedBad>;
    readonly counts: { readonly [T in TableName | "laps"]: MergeCounts };
    readonly both: Listed<BothEdited>;
  };
}

export type Looked = Reading<{ readonly preview: Preview }>;

/** Reads a file and says what is in it and what a merge would change. */
export const look: Errand<Look, Looked> = async ({ source }, { book, readFile, tell }) => {
  tell({ step: "Reading the file" });
  const read = await readFile(source);
  if (!read.ok) return read;
  tell({ step: "Comparing it with the open logbook" });
  const here = await dump(book);
  const { rows, bad } = rowsBeside(read, here);
  const merged = mergeRows(here, rows, book.clock());
  const { title, madeAt, isVerified } = read.backup;
  return {
    ok: true,
    preview: {
      title,
      madeAt,
      isVerified,
      holds: held(read.alone.rows),
      bad: named(read.alone.bad),
      merging: {
        bad: named(bad),
        counts: countChanges(here, merged),
        both: listed(editedOnBoth(here, rows, merged)),
      },
    },
  };
};

const listed = <T>(all: readonly T[]): Listed<T> => ({ first: all.slice(0, mostListed), all: all.length });

function named(bad: readonly BadRow[]): Listed<NamedBad> {
  const { first, all } = listed(bad);
  return { first: first.map(({ table, place, why }) => ({ table, place, why })), all };
}

function held(rows: AllRows): Preview["holds"] {
  const count = (all: readonly Stamped[]): Held => {
    const deleted = all.filter(({ deletedAt }) => deletedAt !== undefined).length;
    return { live: all.length - deleted, deleted };
  };
  return {
    ...everyTable((table) => count(rows[table])),
    laps: count(rows.runs.flatMap(({ laps }) => laps)),
  };
}
