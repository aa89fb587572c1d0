import fc from "fast-check";
import {
  type AllRows,
  addDays,
  type CalendarDate,
  daysBetween,
  type Lap,
  noRows,
  type Page,
  type ReferenceLap,
  type RemarkKind,
  type Run,
  type Session,
  type Target,
} from "#domain";

/** The day on which all of it is looked at: a Wednesday, so that the week is not over. */
export const today: CalendarDate = "2026-11-25";

const fates = [
  ...["plain", "plain", "plain", "plain", "plain", "plain", "plain", "plain", "plain", "plain"],
  ...["tenths", "memory", "off", "cut", "traffic", "out", "no time", "not best", "odd", "deleted"],
] as const;
type Fate =
  | "plain"
  | "tenths"
  | "memory"
  | "no time"
  | "not best"
  | "odd"
  | "deleted"
  | Extract<RemarkKind, "off" | "cut" | "traffic" | "out">;

const aLap = fc.record({
  /** Above the session's level, ms. */
  above: fc.integer({ min: 0, max: 1200 }),
  fate: fc.constantFrom(...(fates as readonly Fate[])),
});

const aRun = fc.record({
  laps: fc.array(aLap, { minLength: 1, maxLength: 14 }),
  as: fc.constantFrom(
    ...([
      "pace",
      "pace",
      "pace",
      "pace",
      "pace",
      "pace",
      "brisk",
      "wet",
      "damp",
      "drill",
      "warm-up",
    ] as const),
    ...(["race", "guest", "summary", "emptied", "tenths", "partly"] as const),
  ),
});

const aSession = fc.record({
  /** Days since the one before; none is the same evening. */
  gap: fc.constantFrom(0, 1, 1, 2, 2, 3, 3, 4, 5, 7, 12, 25, 40),
  runs: fc.array(aRun, { minLength: 1, maxLength: 3 }),
  as: fc.constantFrom(
    ...(["driven", "driven", "driven", "driven", "driven", "driven", "afterwards", "emptied"] as const),
  ),
  /** Faster than the one before by so much, ms. */
  gain: fc.integer({ min: -150, max: 300 }),
  turnsPage: fc.constantFrom(...Array.from({ length: 14 }, (_, n) => n === 0)),
  targetAbove: fc.option(fc.integer({ min: -400, max: 900 }), { freq: 5, nil: undefined }),
});

const aTarget = fc.record({
  kind: fc.constantFrom("best", "median", "best", "median", "meanOf", "scatter", "cleanShare"),
  /** From the level of the last session, ms. */
  above: fc.integer({ min: -1500, max: 2500 }),
  /** Days before today it was set, and days from then to its date. */
  setAgo: fc.integer({ min: 0, max: 60 }),
  within: fc.option(fc.integer({ min: 0, max: 70 }), { freq: 6, nil: undefined }),
  archivedAgo: fc.option(fc.integer({ min: 0, max: 20 }), { freq: 4, nil: undefined }),
});

const aCombo = fc.record({
  sessions: fc.array(aSession, { minLength: 1, maxLength: 9 }),
  targets: fc.array(aTarget, { maxLength: 4 }),
  /** Days from its last session to today. */
  restedFor: fc.constantFrom(0, 0, 0, 1, 1, 2, 2, 4, 9, 15),
  referenceAbove: fc.option(fc.integer({ min: -1500, max: 500 }), { freq: 2, nil: undefined }),
});

const aLogbook = fc.record({
  combos: fc.array(aCombo, { minLength: 1, maxLength: 3 }),
  settlingLaps: fc.constantFrom(0, 0, 1, 2),
});

type Plan<A> = A extends fc.Arbitrary<infer T> ? T : never;

/**
 * Logbooks as they are after some weeks of real use: several combos, pages turned, targets of every kind set, missed and
 * archived, wet and damp runs, drills, warm-ups, races, guests, summaries, runs written in part, tenths, laps without a
 * time, odd ones, emptied runs and sessions, sessions entered afterwards.
 */
export const randomLogbook: fc.Arbitrary<AllRows> = aLogbook.map(rowsOf);

const usualAtFirst = 90_000;
const hour = 3_600_000;

const at = (date: CalendarDate, clock: number) => Date.parse(date) + clock * hour;

function rowsOf({ combos, settlingLaps }: Plan<typeof aLogbook>): AllRows {
  const ids = idsFrom();
  const stamped = (when: number) => ({ id: ids(), createdAt: when, updatedAt: when });
  const begun = at("2026-01-01", 12);
  const rows = {
    cars: [] as AllRows["cars"][number][],
    tracks: [] as AllRows["tracks"][number][],
    layouts: [] as AllRows["layouts"][number][],
    combos: [] as AllRows["combos"][number][],
    pages: [] as Page[],
    references: [] as ReferenceLap[],
    sessions: [] as Session[],
    runs: [] as Run[],
    targets: [] as Target[],
  };
  combos.forEach((plan, n) => {
    const car = { ...stamped(begun), name: `car ${n}` };
    const track = { ...stamped(begun), name: `track ${n}` };
    const layout = { ...stamped(begun), trackId: track.id, name: "", corners: [] };
    const combo = { ...stamped(begun), carId: car.id, layoutId: layout.id };
    rows.cars.push(car);
    rows.tracks.push(track);
    rows.layouts.push(layout);
    rows.combos.push(combo);
    const driven = sessionsOf(plan, combo.id, stamped);
    rows.sessions.push(...driven.sessions);
    rows.runs.push(...driven.runs);
    rows.pages.push(...driven.pages);
    rows.targets.push(...plan.targets.map((target) => targetOf(target, combo.id, driven.usual, stamped)));
    if (plan.referenceAbove !== undefined)
      rows.references.push({
        ...stamped(at(addDays(today, -20), 12)),
        comboId: combo.id,
        ms: driven.usual + plan.referenceAbove,
        decimals: 3,
        source: "a friend",
      });
  });
  const preferences = {
    id: "00000000-0000-7000-8000-000000000001",
    createdAt: begun,
    updatedAt: begun,
    displayDecimals: 3,
    relativeTo: "lap",
    dayStartsAt: 4,
    settlingLaps,
    marginPercent: 0.5,
  } as const;
  return { ...noRows, ...rows, preferences: [preferences] };
}

type Stamper = (when: number) => {
  readonly id: string;
  readonly createdAt: number;
  readonly updatedAt: number;
};

function sessionsOf({ sessions: plans, restedFor }: Plan<typeof aCombo>, comboId: string, stamped: Stamper) {
  const last = addDays(today, -restedFor);
  const days = plans.map((_, n) =>
    addDays(
      last,
      plans.slice(n + 1).reduce((sum, { gap }) => sum - gap, 0),
    ),
  );
  const sessions: Session[] = [];
  const runs: Run[] = [];
  const pages: Page[] = [];
  let usual = usualAtFirst;
  plans.forEach((plan, n) => {
    const date = days[n] as CalendarDate;
    usual -= plan.gain;
    const isAfterwards = plan.as === "afterwards";
    const earlier = sessions.filter((one) => one.date === date).length;
    const startedAt = isAfterwards ? at(date, 11) : at(date, 18 + 1.5 * earlier);
    if (plan.turnsPage)
      pages.push({ ...stamped(startedAt - hour), comboId, from: startedAt - hour, reason: "new tyre model" });
    const session: Session = {
      ...stamped(startedAt),
      comboId,
      startedAt,
      isTimeOfDayKnown: !isAfterwards,
      date,
      zone: "Europe/Berlin",
      endedAt: startedAt + hour,
      focus: "free",
      note: "",
      ...(plan.targetAbove !== undefined && { targetMs: usual + plan.targetAbove }),
    };
    sessions.push(session);
    plan.runs.forEach((run, place) => {
      runs.push(
        runOf(plan.as === "emptied" ? { ...run, as: "emptied" } : run, place + 1, session, usual, stamped),
      );
    });
  });
  return { sessions, runs, pages, usual };
}

function runOf(
  { laps, as }: Plan<typeof aRun>,
  n: number,
  { id: sessionId, comboId, startedAt }: Session,
  usual: number,
  stamped: Stamper,
): Run {
  const kind = as === "drill" || as === "warm-up" || as === "race" ? as : "pace";
  const surface = as === "wet" || as === "damp" ? as : "dry";
  const slower = surface === "dry" ? 0 : 8000;
  const written = laps.map(({ above, fate }, place) =>
    lapOf(as === "tenths" ? "tenths" : fate, usual + slower + above, place + 1, startedAt, stamped),
  );
  const run: Run = {
    ...stamped(startedAt),
    sessionId,
    comboId,
    n,
    startedAt: startedAt + n * 600_000,
    endedAt: startedAt + n * 600_000 + 500_000,
    kind,
    effort: as === "brisk" ? "brisk" : "full",
    surface,
    note: "",
    laps: written,
  };
  switch (as) {
    case "guest":
      return { ...run, guest: "Ada" };
    case "emptied":
      return { ...run, laps: written.map((lap) => ({ ...lap, deletedAt: startedAt })) };
    case "partly":
      return { ...run, lapsDriven: written.length + 6 };
    case "summary":
      return {
        ...run,
        laps: [],
        summary: { laps: laps.length, bestMs: usual + (laps[0]?.above ?? 0), bestDecimals: 1, off: 1 },
      };
    default:
      return run;
  }
}

function lapOf(fate: Fate, ms: number, n: number, when: number, stamped: Stamper): Lap {
  const lap = { ...stamped(when), n, ms, decimals: 3, source: "typed", remarks: [] } as const;
  switch (fate) {
    case "plain":
      return lap;
    case "tenths":
      return { ...lap, ms: 100 * Math.floor(ms / 100), decimals: 1 };
    case "memory":
      return { ...lap, source: "memory" };
    case "not best":
      return { ...lap, isNotBest: true };
    case "odd":
      return { ...lap, ms: ms - 6000, isOdd: true };
    case "deleted":
      return { ...lap, deletedAt: when };
    case "no time": {
      const { ms: _, decimals: __, ...without } = lap;
      return without;
    }
    default:
      return { ...lap, remarks: [{ kind: fate }] };
  }
}

function targetOf(
  { kind, above, setAgo, within, archivedAgo }: Plan<typeof aTarget>,
  comboId: string,
  usual: number,
  stamped: Stamper,
): Target {
  const setOn = addDays(today, -setAgo);
  const setAt = at(setOn, 12);
  const value =
    kind === "scatter"
      ? 300 + Math.abs(above)
      : kind === "cleanShare"
        ? 300 + (Math.abs(above) % 700)
        : usual + above;
  return {
    ...stamped(setAt),
    comboId,
    kind,
    value,
    ...(kind === "meanOf" && { laps: 3 }),
    ...(within !== undefined && { by: addDays(setOn, within) }),
    setAt,
    setOn,
    start: value + (kind === "cleanShare" ? -100 : 700),
    ...(archivedAgo !== undefined && { archivedAt: Math.max(setAt, at(addDays(today, -archivedAgo), 13)) }),
  };
}

/** Ids that sort as they are made. */
function idsFrom(): () => string {
  let made = 0;
  return () => {
    made += 1;
    return `01900000-0000-7000-8000-${String(made).padStart(12, "0")}`;
  };
}

/** How many days ago a day is, as the logbook is looked at. */
export const daysAgo = (date: CalendarDate) => daysBetween(date, today);
