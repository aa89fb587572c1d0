import type { Id, Stamped } from "#domain";
import { type Patch, patched } from "../patch.ts";
import { withStamps } from "../versions.ts";

/** The fields of a row or lap that its writer chooses. */
export type Fields<T extends Stamped> = Omit<T, keyof Stamped>;

/** A new row or lap. Only the functions of this file stamp. */
export function stampNew<T extends Stamped>(fields: Fields<T>, id: Id, now: number): T {
  return { ...fields, id, createdAt: now, updatedAt: now } as unknown as T;
}

/** A changed one: `updatedAt` is the later of the clock and the old stamp + 1, so it never runs back. */
export function stampChanged<T extends Stamped>(row: T, patch: Patch<T>, now: number): T {
  return { ...patched(row, patch), ...stampAfter(row, now) };
}

/** A deleted one: marked, so that merging two copies does not bring it back. */
export function stampDeleted<T extends Stamped>(row: T, now: number): T {
  const stamps = stampAfter(row, now);
  return { ...row, ...stamps, deletedAt: stamps.updatedAt };
}

function stampAfter({ updatedAt, had = [] }: Stamped, now: number) {
  return { updatedAt: Math.max(now, updatedAt + 1), had: fewer(withStamps(had, [updatedAt])) };
}

/** Stamps kept of one row; beyond that the one nearest to its follower goes, so that leaps of a clock stay known. */
const most = 20;

function fewer(stamps: readonly number[]): readonly number[] {
  if (stamps.length <= most) return stamps;
  const leaps = stamps.slice(1).map((stamp, at) => stamp - (stamps[at] ?? stamp));
  return stamps.toSpliced(leaps.indexOf(Math.min(...leaps)), 1);
}
