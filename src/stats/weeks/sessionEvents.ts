import { lapsSoFar, type PastSession } from "./history.ts";

/**
 * Something dated that moves a driver's level: a step that stays (a change of settings), or a break of ten days or
 * more, whose loss halves every 20 laps after it.
 */
export interface SessionEvent {
  readonly kind: "step" | "break";
  /** Number of sessions before it; as many as there are means that it acts on the coming ones. */
  readonly afterSession: number;
}

/** An event as a column of the model: its shape over sessions, and its normal prior in units of σ. */
export interface EventColumn {
  /** Prior mean in ms. */
  readonly mean: number;
  /** Prior variance in units of σ². */
  readonly variance: number;
  /** Weight of the event in the session with this number (from 0) at this place. */
  readonly at: (session: number, place: number) => number;
}

const stepDeviation = 4;
const breakDeviation = 1.25;
const breakShare = 0.005;
const lapsToHalveBreak = 20;

/**
 * The columns of dated events. Our methods, §5.
 * @param usual median of the session medians, in ms
 * @throws RangeError for an event that is not between sessions of the history
 */
export function eventColumns(
  events: readonly SessionEvent[],
  history: readonly PastSession[],
  usual: number,
): EventColumn[] {
  return events.map(({ kind, afterSession }, index) => {
    if (!Number.isInteger(afterSession) || afterSession < 0 || afterSession > history.length) {
      throw new RangeError(
        `events[${index}].afterSession is ${afterSession}: a whole number from 0 to ${history.length} is needed`,
      );
    }
    const isAfter = (session: number) => session >= afterSession;
    if (kind === "step") {
      return { mean: 0, variance: stepDeviation ** 2, at: (session) => (isAfter(session) ? 1 : 0) };
    }
    const begins = lapsSoFar(history.slice(0, afterSession));
    return {
      mean: breakShare * usual,
      variance: breakDeviation ** 2,
      at: (session, place) => (isAfter(session) ? 2 ** ((begins - place) / lapsToHalveBreak) : 0),
    };
  });
}
