import { addDays, type CalendarDate, type Figure, type Id, type Page } from "#domain";
import { median } from "#numbers";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { type PageSession, pageEvents, pageHistory } from "../period/pageHistory.ts";
import { type StepAtChange, stepAtChange } from "../weeks/stepAtChange.ts";

/** Days before and after a change whose sessions are set side by side. */
const daysAround = 28;

export interface RigStepsInput {
  readonly combos: readonly {
    readonly comboId: Id;
    readonly digests: readonly SessionDigest[];
    readonly pages: readonly Pick<Page, "from">[];
  }[];
  /** First day of the record of rig settings. */
  readonly on: CalendarDate;
  /** First days of all records, this one among them. */
  readonly records: readonly CalendarDate[];
  readonly today: CalendarDate;
}

/** The sessions of one side: how many, and the median of their usual laps, ms. */
export interface SideOfStep {
  readonly sessions: number;
  readonly usual: number;
}

/** One combo about a change of the rig. */
export interface RigStep {
  readonly comboId: Id;
  readonly before: SideOfStep;
  readonly after: SideOfStep;
  /** What happened at the change itself, practice taken out. */
  readonly step: Figure<StepAtChange>;
}

/**
 * Before and after a change of the rig, for each combo with a usual lap in the 4 weeks before and after on one page.
 * The medians stand for themselves; the step is that of the level over all sessions of the page, which knows
 * the breaks and the other changes (see `stepAtChange`). Not a test: the driver was also practising.
 */
export function rigSteps({ combos, on, records, today }: RigStepsInput): RigStep[] {
  return combos.flatMap(({ comboId, digests, pages }) => {
    const history = pageHistory(onPageOf(on, digests, pages));
    const before = sideOf(history, addDays(on, -daysAround), addDays(on, -1));
    const after = sideOf(history, on, addDays(on, daysAround - 1));
    if (before === undefined || after === undefined) return [];
    const afterSession = history.filter(({ date }) => date < on).length;
    // Another change between the same two sessions cannot be told from this one.
    const others = pageEvents(history, today, records).filter(
      (event) => event.kind === "break" || event.afterSession !== afterSession,
    );
    const step = stepAtChange({ afterSession, history, events: others });
    return [{ comboId, before, after, step }];
  });
}

/** The sessions of the page on which the first one from the day on stands. */
function onPageOf(
  on: CalendarDate,
  digests: readonly SessionDigest[],
  pages: readonly Pick<Page, "from">[],
): SessionDigest[] {
  const first = Math.min(...digests.filter(({ date }) => date >= on).map(({ startedAt }) => startedAt));
  const starts = pages.map(({ from }) => from);
  const from = Math.max(Number.NEGATIVE_INFINITY, ...starts.filter((start) => start <= first));
  const to = Math.min(Number.POSITIVE_INFINITY, ...starts.filter((start) => start > first));
  return digests.filter(({ startedAt }) => startedAt >= from && startedAt < to);
}

function sideOf(
  history: readonly PageSession[],
  from: CalendarDate,
  to: CalendarDate,
): SideOfStep | undefined {
  const some = history.filter(({ date }) => date >= from && date <= to);
  const usual = median(some.map(({ medianMs }) => medianMs));
  return usual === undefined ? undefined : { sessions: some.length, usual };
}
