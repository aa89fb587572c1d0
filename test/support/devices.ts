import fc from "fast-check";
import type { Patch } from "#db";
import type { AllRows, Lap, Run, Session, Stamped } from "#domain";
import { stampChanged, stampDeleted } from "../../src/db/writes/stamp.ts";
import { aLap } from "./aLap.ts";

/** Something a driver does on one device; `of` chooses among what is there. */
export type Deed =
  | { readonly kind: "session" }
  | { readonly kind: "lap"; readonly of: number }
  | { readonly kind: "editLap"; readonly of: number; readonly ms: number }
  | { readonly kind: "deleteLap"; readonly of: number }
  | { readonly kind: "moveLap"; readonly of: number; readonly to: number }
  | { readonly kind: "note"; readonly of: number; readonly note: string }
  | { readonly kind: "deleteSession"; readonly of: number };

const of = fc.nat(5);
/** An evening on one device. */
export const deeds: fc.Arbitrary<Deed[]> = fc.array(
  fc.oneof(
    fc.record({ kind: fc.constant("session" as const) }),
    fc.record({ kind: fc.constant("lap" as const), of }),
    fc.record({ kind: fc.constant("editLap" as const), of, ms: fc.integer({ min: 80_000, max: 90_000 }) }),
    fc.record({ kind: fc.constant("deleteLap" as const), of }),
    fc.record({ kind: fc.constant("moveLap" as const), of, to: of }),
    fc.record({ kind: fc.constant("note" as const), of, note: fc.constantFrom("", "kerb", "late") }),
    fc.record({ kind: fc.constant("deleteSession" as const), of }),
  ),
  { maxLength: 8 },
);

/** A device with ids of its own; its clock moves on with each deed. */
export function aDevice(number: number) {
  let made = 0;
  let now = number * 10;
  return {
    newId: () => {
      made += 1;
      return `00000000-0000-7000-8${String(number).padStart(3, "0")}-${String(made).padStart(12, "0")}`;
    },
    /** What its clock shows; clocks of devices differ. */
    now: () => now,
    tick: () => {
      now += 7;
      return now;
    },
  };
}

type Device = ReturnType<typeof aDevice>;

export const lapsOf = (rows: AllRows): Lap[] => rows.runs.flatMap(({ laps }) => laps);

/** The rows after an evening on a device, stamped by the app. */
export function practise(device: Device, rows: AllRows, evening: readonly Deed[]): AllRows {
  return evening.reduce((now, deed) => done(device, now, deed), rows);
}

function done(device: Device, rows: AllRows, deed: Deed): AllRows {
  const at = device.tick();
  const changed = <R extends Stamped>(row: R, patch: Partial<R>): R =>
    stampChanged(row, patch as unknown as Patch<R>, at);
  const deleted = <R extends Stamped>(row: R): R => stampDeleted(row, at);
  const live = rows.runs.filter((run) => run.deletedAt === undefined);
  const chosen = <T>(some: readonly T[], n: number): T | undefined => some[n % Math.max(1, some.length)];
  const withRun = (run: Run): AllRows => ({
    ...rows,
    runs: rows.runs.map((one) => (one.id === run.id ? run : one)),
  });
  const lapAndRun = () => {
    const laps = live.flatMap((run) =>
      run.laps.filter((lap) => lap.deletedAt === undefined).map((lap) => ({ run, lap })),
    );
    return chosen(laps, "of" in deed ? deed.of : 0);
  };
  const onLap = (change: (lap: Lap) => Lap): AllRows => {
    const found = lapAndRun();
    if (found === undefined) return rows;
    const { run, lap } = found;
    return withRun({ ...run, laps: run.laps.map((one) => (one.id === lap.id ? change(one) : one)) });
  };
  switch (deed.kind) {
    case "session":
      return newSession(device, rows, at);
    case "lap": {
      const run = chosen(live, deed.of);
      if (run === undefined) return rows;
      const lap: Lap = {
        ...aLap(84_000 + at),
        id: device.newId(),
        createdAt: at,
        updatedAt: at,
        n: run.laps.length + 1,
      };
      return withRun({ ...run, laps: [...run.laps, lap] });
    }
    case "editLap":
      return onLap((lap) => changed(lap, { ms: deed.ms }));
    case "deleteLap":
      return onLap(deleted);
    case "moveLap": {
      const found = lapAndRun();
      const to = chosen(live, deed.to);
      if (found === undefined || to === undefined || to.id === found.run.id) return rows;
      const without = withRun({ ...found.run, laps: found.run.laps.filter(({ id }) => id !== found.lap.id) });
      const moved = changed(found.lap, {});
      return {
        ...without,
        runs: without.runs.map((run) => (run.id === to.id ? { ...run, laps: [...run.laps, moved] } : run)),
      };
    }
    case "note": {
      const session = chosen(
        rows.sessions.filter(({ deletedAt }) => deletedAt === undefined),
        deed.of,
      );
      return {
        ...rows,
        sessions: rows.sessions.map((one) => (one === session ? changed(one, { note: deed.note }) : one)),
      };
    }
    case "deleteSession": {
      const session = chosen(
        rows.sessions.filter(({ deletedAt }) => deletedAt === undefined),
        deed.of,
      );
      if (session === undefined) return rows;
      return {
        ...rows,
        sessions: rows.sessions.map((one) => (one === session ? deleted(one) : one)),
        runs: rows.runs.map((run) =>
          run.sessionId === session.id && run.deletedAt === undefined ? deleted(run) : run,
        ),
      };
    }
  }
}

function newSession(device: Device, rows: AllRows, at: number): AllRows {
  const stamps = () => ({ id: device.newId(), createdAt: at, updatedAt: at });
  const comboId = "00000000-0000-7000-8000-000000000000";
  const session: Session = {
    ...stamps(),
    comboId,
    startedAt: at,
    isTimeOfDayKnown: true,
    date: "2026-11-25",
    zone: "UTC",
    focus: "free",
    note: "",
  };
  const run: Run = {
    ...stamps(),
    sessionId: session.id,
    comboId,
    n: 1,
    startedAt: at,
    kind: "pace",
    effort: "full",
    surface: "dry",
    note: "",
    laps: [],
  };
  return { ...rows, sessions: [...rows.sessions, session], runs: [...rows.runs, run] };
}
