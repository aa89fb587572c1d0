import type { RunsToJudgeBy } from "#db";
import {
  type Id,
  isMeasure,
  isPaceRun,
  type Layout,
  lapsInOrder,
  lapsInPlace,
  outOfTest,
  type Preferences,
  type Run,
} from "#domain";
import { type EntryContext, isAlike, knownFrom, knownTimes, measuresOf, usualLap } from "#entry";
import { mayTakeBest, median } from "#stats";

/** A best time, with what is known of its decimals. */
export interface Best {
  readonly ms: number;
  readonly decimals: number;
}

interface About {
  /** The run the lap is typed in; undefined where none is. */
  readonly run: Run | undefined;
  /** A lap of it that is typed anew: it is no measure of itself. */
  readonly editedId?: Id | undefined;
  /** All runs of the session. */
  readonly runs: readonly Run[];
  /** Runs outside the session. */
  readonly around: RunsToJudgeBy;
  readonly layout: Layout;
  readonly preferences: Preferences;
  /** Best of the page, a lap confirmed as odd and the edited one left out. */
  readonly pb: Best | undefined;
  /** Whether the page had a best before the session. */
  readonly hasEarlierBest: boolean;
  readonly targetMs: number | undefined;
}

/** What is known while a lap is typed: the usual pace, the lap before, the PB, the layout, what to judge it by. */
export function entryContext(about: About): EntryContext {
  const { run, editedId, layout, preferences, pb, targetMs } = about;
  const last = run && lapBefore(run, editedId);
  return {
    ...timesKnown(about),
    ...(last?.ms !== undefined && { previousMs: last.ms, previousDecimals: last.decimals ?? 3 }),
    ...(pb && { pbMs: pb.ms, pbDecimals: pb.decimals }),
    ...(targetMs !== undefined && { targetMs }),
    relativeTo: preferences.relativeTo,
    displayDecimals: preferences.displayDecimals,
    ...(layout.sectors !== undefined && { sectors: layout.sectors }),
    ...(layout.corners.length > 0 && { corners: layout.corners.length }),
    isPractice: run === undefined || (run.guest === undefined && mayTakeBest(run.kind, about.hasEarlierBest)),
    isCounted: run?.kind === "drill" && run.line !== undefined,
    isSlow: run?.kind === "race" && last === undefined,
  };
}

function lapBefore(run: Run, editedId: Id | undefined) {
  const laps = lapsInOrder(run);
  const place = editedId === undefined ? -1 : laps.findIndex(({ id }) => id === editedId);
  return place < 0 ? laps.at(-1) : laps[place - 1];
}

function timesKnown(about: About) {
  const { run, editedId, around, layout, preferences, pb } = about;
  const runs =
    editedId === undefined
      ? about.runs
      : about.runs.map((one) => ({ ...one, laps: one.laps.filter(({ id }) => id !== editedId) }));
  const own = runs.find(({ id }) => id === run?.id);
  const like = runs.filter((other) => run !== undefined && isAlike(run, other));
  const known = knownFrom(run ?? noRun, { session: runs, ...around }, layout.length);
  // Laps that were stored before they were judged, here or elsewhere, are no measure either.
  const anchor = median(known.page ?? []) ?? pb?.ms;
  const near = (times: readonly number[]) =>
    anchor === undefined ? times : times.filter((ms) => ms >= anchor / 3 && ms <= anchor * 3);
  const { surface } = run ?? noRun;
  const isDry = surface === "dry";
  const isPace = run !== undefined && isPaceRun({ ...outOfTest(run), surface: "dry" });
  const isRace = run?.kind === "race" && isPaceRun({ ...outOfTest(run), kind: "pace", surface: "dry" });
  const isPbUsual = isDry && (run === undefined || isPace || isRace);
  const likeTimes = near(measuresOf(like));
  const paceTimes = near(runs.flatMap((one) => paceTimesOf(one, preferences.settlingLaps)));
  const ofSession = !isRace || likeTimes.length === 0 ? paceTimes : likeTimes;
  const times = {
    paceTimes: isPbUsual ? ofSession : likeTimes,
    runTimes: near(
      own === undefined ? [] : lapsInOrder(own).flatMap((lap) => (isMeasure(lap) ? [lap.ms] : [])),
    ),
    likeTimes,
    known,
    isPbUsual,
    surfaceMs: median(near(measuresOf([...runs, ...around.page].filter((one) => one.surface === surface)))),
    isDry,
    isPaceRun: isPace,
  };
  const usualMs = usualLap(knownTimes(times), { ...times, pbMs: pb?.ms });
  return { ...times, ...(usualMs !== undefined && { usualMs }) };
}

const noRun = { kind: "pace", effort: "full", surface: "dry" } as const;

function paceTimesOf(run: Run, settlingLaps: number): number[] {
  return lapsInPlace(outOfTest(run), settlingLaps).flatMap(({ lap, place }) =>
    place === "pace" && isMeasure(lap) ? [lap.ms] : [],
  );
}
