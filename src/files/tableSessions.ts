import { type CalendarDate, type Id, instantOf, nameKeys, practiceDay } from "#domain";
import type { TableAbout, TableLap, TableSettings } from "./tableLap.ts";

export interface TableRun {
  readonly settings: TableSettings;
  readonly laps: readonly TableLap[];
}

/** A session as a table tells it: the laps of one combo on one practice day, in runs. */
export interface TableSession extends TableAbout {
  readonly id: Id;
  readonly car: string;
  readonly track: string;
  readonly layout: string;
  /** Most sectors a lap of it has; absent where none has any. */
  readonly sectors?: number;
  readonly date: CalendarDate;
  readonly startedAt: number;
  readonly isTimeOfDayKnown: boolean;
  readonly zone: string;
  readonly runs: readonly TableRun[];
}

export interface SessionsAbout {
  /** The zone the driver sits in, for laps that name none. */
  readonly zone: string;
  /** Hour at which a practice day begins. */
  readonly dayStartsAt: number;
  readonly newId: () => Id;
}

const noon = 12;

interface Placed {
  readonly lap: TableLap;
  readonly day: CalendarDate;
  readonly zone: string;
  readonly at: number | undefined;
}

/**
 * Laps of a table as sessions, oldest first: one for each practice day, combo and session number. A run ends where its
 * number or its settings change; laps stand in the order of their numbers, and of the table where they have none. A
 * lap that stands twice in the same place of the same run is taken once; `repeated` counts the others.
 */
export function tableSessions(
  laps: readonly TableLap[],
  { zone, dayStartsAt, newId }: SessionsAbout,
): { readonly sessions: readonly TableSession[]; readonly repeated: number } {
  const groups = new Map<string, Placed[]>();
  const seen = new Set<string>();
  const keyOf = nameKeys();
  for (const lap of laps) {
    const placed = place(lap, zone, dayStartsAt);
    const names = [lap.car, lap.track, lap.layout].map(keyOf);
    const key = JSON.stringify([placed.day, ...names, lap.session ?? ""]);
    if (lap.place !== undefined) {
      const same = JSON.stringify([key, lap.run ?? "", lap.place, lap.lap]);
      if (seen.has(same)) continue;
      seen.add(same);
    }
    const group = groups.get(key);
    if (group) group.push(placed);
    else groups.set(key, [placed]);
  }
  const sessions = [...groups.values()].map((group) => sessionOf(group, newId()));
  const taken = sessions.reduce(
    (sum, { runs }) => sum + runs.reduce((all, run) => all + run.laps.length, 0),
    0,
  );
  return {
    sessions: sessions.sort((a, b) => a.startedAt - b.startedAt || (a.id < b.id ? -1 : 1)),
    repeated: laps.length - taken,
  };
}

function place(lap: TableLap, here: string, dayStartsAt: number): Placed {
  const zone = lap.zone ?? here;
  const { clock } = lap;
  const at =
    lap.instant ??
    (clock && instantOf(lap.date, clock.hour, zone) + (clock.minute * 60 + clock.second) * 1000);
  return { lap, zone, at, day: at === undefined ? lap.date : practiceDay(at, zone, dayStartsAt) };
}

function sessionOf(group: readonly Placed[], id: Id): TableSession {
  const [first] = group as [Placed];
  const known = group.flatMap(({ at }) => at ?? []);
  const laps = group.map(({ lap }) => lap);
  const isTimeOfDayKnown = known.length > 0;
  const sectors = laps.reduce((most, { lap }) => Math.max(most, lap.sectors?.length ?? 0), 0);
  return {
    id,
    car: first.lap.car,
    track: first.lap.track,
    layout: first.lap.layout,
    date: first.day,
    startedAt: isTimeOfDayKnown
      ? known.reduce((a, b) => Math.min(a, b))
      : instantOf(first.day, noon, first.zone),
    isTimeOfDayKnown,
    zone: first.zone,
    runs: runsOf(laps),
    ...(sectors > 0 ? { sectors } : {}),
    ...aboutOf(laps),
  };
}

function runsOf(laps: readonly TableLap[]): TableRun[] {
  const inOrder = laps
    .map((lap, index) => ({ lap, index }))
    .sort((a, b) => (a.lap.run ?? 0) - (b.lap.run ?? 0) || a.index - b.index)
    .map(({ lap }) => lap);
  const runs: { key: string; settings: TableSettings; laps: TableLap[] }[] = [];
  for (const lap of inOrder) {
    const key = JSON.stringify([lap.run ?? "", lap.settings]);
    const last = runs.at(-1);
    if (last?.key === key) last.laps.push(lap);
    else runs.push({ key, settings: lap.settings, laps: [lap] });
  }
  return runs.map(({ settings, laps: own }) => ({
    settings,
    laps: own.every(({ place }) => place !== undefined)
      ? own.toSorted((a, b) => (a.place ?? 0) - (b.place ?? 0))
      : own,
  }));
}

/** What the rows say of the session; where they say different things, all of it. */
function aboutOf(laps: readonly TableLap[]): TableAbout {
  const all = (field: "conditions" | "note") => {
    const texts = [...new Set(laps.flatMap(({ about }) => about[field] ?? []))];
    const text = texts.join("\n");
    return text === "" ? {} : { [field]: text };
  };
  const focus = laps.find(({ about }) => about.focus !== undefined)?.about.focus;
  return { ...all("conditions"), ...all("note"), ...(focus === undefined ? {} : { focus }) };
}
