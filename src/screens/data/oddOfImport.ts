import { nameKeys } from "#domain";
import type { TableLap, TableSession } from "#files";

/** The sessions of one combo of a table. */
export interface ImportedCombo extends Pick<TableSession, "car" | "track"> {
  /** Name of the layout. */
  readonly layout: string;
  readonly sessions: readonly TableSession[];
}

/** Sessions of a table by their combos. */
export function combosOf(sessions: readonly TableSession[]): ImportedCombo[] {
  const keyOf = nameKeys();
  const combos = new Map<string, TableSession[]>();
  for (const session of sessions) {
    const { car, track, layout } = session;
    const key = JSON.stringify([car, track, layout].map(keyOf));
    const own = combos.get(key);
    if (own === undefined) combos.set(key, [session]);
    else own.push(session);
  }
  return [...combos.values()].flatMap((own) => {
    const [first] = own;
    return first ? [{ car: first.car, track: first.track, layout: first.layout, sessions: own }] : [];
  });
}

/** The sessions as they would be stored: laps far from the usual confirmed as odd, or left out. */
export function takenFrom(
  sessions: readonly TableSession[],
  odd: ReadonlyMap<TableLap, unknown>,
  leavesOdd: boolean,
): readonly TableSession[] {
  if (odd.size === 0) return sessions;
  const taken = (row: TableLap) =>
    !odd.has(row) ? [row] : leavesOdd ? [] : [{ ...row, lap: { ...row.lap, isOdd: true as const } }];
  return sessions.map((session) => ({
    ...session,
    runs: session.runs.map((run) => ({ ...run, laps: run.laps.flatMap(taken) })),
  }));
}
