import { isOnPage, type PageSpan } from "#combo";
import { type CalendarDate, type Forecast, type Id, isTimeKind, type Target } from "#domain";
import type { TargetState } from "../combo/targetStates.ts";
import { isDrivenSession } from "../digest/isDrivenSession.ts";
import type { PagePractice } from "./forecastBasis.ts";
import { targetOutlook } from "./targetOutlook.ts";

/** What is kept of a chance that is told. */
export type NewForecast = Required<
  Pick<
    Forecast,
    | "targetId"
    | "comboId"
    | "madeOn"
    | "by"
    | "chance"
    | "method"
    | "kind"
    | "value"
    | "sessions"
    | "lapsASession"
  >
> &
  Pick<Forecast, "laps" | "madeAfter">;

/** Names the way chances are worked out, so that the record can tell one from another. */
const METHOD = "level, version 1";

export interface ForecastsQuestion extends PagePractice {
  readonly span: PageSpan;
  readonly states: readonly TargetState[];
  /** Those kept of the combo's targets. */
  readonly forecasts: readonly Forecast[];
}

/**
 * The forecasts to be kept now: of each open target with a date and a chance one, unless one was made after the same last
 * session. Our methods, §6. None on the day on which a target was set or changed: a slip put right would stay in the record,
 * and setting it could not be taken back.
 */
export function forecastsToMake(question: ForecastsQuestion): NewForecast[] {
  const { span, states, forecasts, page, today, comboId } = question;
  const last = page
    .filter(isDrivenSession)
    .toSorted((a, b) => a.startedAt - b.startedAt)
    .at(-1);
  return states.flatMap(({ target, standing }) => {
    if (standing.kind !== "open" || target.archivedAt !== undefined || !isOnPage(span, target.setAt))
      return [];
    if (isOfToday(target, today) || isKept(target, last?.sessionId, forecasts)) return [];
    const { kind, value, laps, by } = target;
    if (by === undefined || by <= today || !isTimeKind(kind)) return [];
    const outlook = targetOutlook({ ...question, kind, value, laps, by });
    if (!outlook.known || outlook.value.byDate === undefined) return [];
    const { byDate, rate } = outlook.value;
    return [
      {
        ...{ targetId: target.id, comboId, madeOn: today as CalendarDate, by, kind, value },
        ...{ chance: byDate.chance, sessions: byDate.sessions, method: METHOD },
        lapsASession: rate.lapsASession,
        ...(laps !== undefined && { laps }),
        ...(last !== undefined && { madeAfter: last.sessionId }),
      },
    ];
  });
}

/** Whether it was set or changed on the day. */
function isOfToday({ setOn, earlier = [] }: Target, today: CalendarDate): boolean {
  return setOn >= today || (earlier.at(-1)?.untilDay ?? "") >= today;
}

/** Whether one was kept after this session, or, in rows that do not name one, on the day. */
function isKept({ id }: Target, session: Id | undefined, forecasts: readonly Forecast[]): boolean {
  return forecasts.some(({ targetId, madeAfter }) => targetId === id && madeAfter === session);
}
