import { type CalendarDate, type Figure, type Forecast, grouped, type Id } from "#domain";
import { type WantedThen, wantedThen } from "./forecastOutcome.ts";
import { type ForecastRecord, forecastRecord } from "./forecastRecord.ts";
import { type RecordAgainstSaid, type RecordedForecast, recordAgainstSaid } from "./recordAgainstSaid.ts";

/** A forecast that was kept, and what came of it. */
export interface JudgedForecast {
  readonly forecast: Forecast;
  /** The target it was about, deleted or not; undefined where it is gone for good. */
  readonly target: WantedThen | undefined;
  readonly outcome: Figure<boolean>;
}

/** What was said of one target with its date, oldest first. */
export interface TargetRecord {
  readonly comboId: Id;
  /** What was wanted when it was said; undefined where nothing tells any more. */
  readonly wanted: WantedThen | undefined;
  readonly by: CalendarDate;
  readonly said: readonly {
    readonly id: Id;
    readonly madeOn: CalendarDate;
    readonly chance: number;
    readonly outcome: Figure<boolean>;
  }[];
}

/** The app's own record: every forecast by target, and how those that were scored have turned out. */
export interface OwnRecord {
  /** Those whose date has passed first, the latest date first; then those to come, the nearest first. */
  readonly targets: readonly TargetRecord[];
  /** Undefined while none is scored. */
  readonly record: ForecastRecord | undefined;
  readonly against: Figure<RecordAgainstSaid>;
}

/**
 * Puts the app's own record together. Where two devices said something of one target after the same session, what was said first
 * counts.
 * @param judged in any order
 */
export function ownRecord(judged: readonly JudgedForecast[]): OwnRecord {
  const inTime = onceEach(
    judged.toSorted((a, b) => a.forecast.createdAt - b.forecast.createdAt || order(a.forecast, b.forecast)),
  );
  const byTarget = grouped(inTime, groupOf);
  const targets = [...byTarget.values()].map(ofTarget).toSorted(dueFirst);
  const scored = inTime.flatMap(({ forecast, outcome }): RecordedForecast[] =>
    outcome.known ? [{ ...forecast, reached: outcome.value }] : [],
  );
  return { targets, record: forecastRecord(scored), against: recordAgainstSaid(scored) };
}

const order = (a: Forecast, b: Forecast) => (a.id < b.id ? -1 : 1);

/** Without what was said a second time of a target after the same session. */
function onceEach(judged: readonly JudgedForecast[]): readonly JudgedForecast[] {
  const seen = new Set<string>();
  return judged.filter(({ forecast: { targetId, madeAfter } }) => {
    if (madeAfter === undefined) return true;
    const key = `${targetId} ${madeAfter}`;
    return !seen.has(key) && seen.add(key);
  });
}

function dueFirst(a: TargetRecord, b: TargetRecord): number {
  const [isOpen, isOtherOpen] = [isToCome(a), isToCome(b)];
  if (isOpen !== isOtherOpen) return isOpen ? 1 : -1;
  if (a.by === b.by) return 0;
  return a.by < b.by === isOpen ? -1 : 1;
}

function isToCome({ said }: TargetRecord): boolean {
  return said.every(
    ({ outcome }) =>
      !outcome.known && "because" in outcome.reason && outcome.reason.because === "date to come",
  );
}

function groupOf(judged: JudgedForecast): string {
  const { targetId, by } = judged.forecast;
  const wanted = wantedThen(judged.forecast, judged.target);
  return [targetId, by, wanted?.kind, wanted?.value, wanted?.laps].join(" ");
}

function ofTarget(judged: readonly JudgedForecast[]): TargetRecord {
  const [first] = judged;
  if (first === undefined) throw new RangeError("a target without a forecast");
  const { comboId, by } = first.forecast;
  const said = judged.map(({ forecast: { id, madeOn, chance }, outcome }) => ({
    id,
    madeOn,
    chance,
    outcome,
  }));
  return { comboId, wanted: wantedThen(first.forecast, first.target), by, said };
}
