import type { Because, Countable, Figure, NotCompared, PlainCause, Reason, Shortage } from "#domain";
import { asSentence, inWords } from "./counted.ts";
import { sayWrongMeasure } from "./wrongMeasure.ts";

/** One of a thing, and more of them. */
const names: Readonly<Record<Countable, readonly [one: string, more: string]>> = {
  "timed lap": ["timed lap", "timed laps"],
  "clean lap": ["clean lap", "clean laps"],
  "clean lap with sectors": ["clean lap with sectors", "clean laps with sectors"],
  "pace lap": ["pace lap", "pace laps"],
  "exact pace lap": ["exact pace lap", "exact pace laps"],
  "exact clean lap": ["exact clean lap", "exact clean laps"],
  "pace lap in a row": ["pace lap in a row", "pace laps in a row"],
  "pace lap with sectors": ["pace lap with sectors", "pace laps with sectors"],
  sector: ["sector", "sectors"],
  session: ["session", "sessions"],
  "session of each kind": ["session of each kind", "sessions of each kind"],
  "session to come": ["session to come", "sessions to come"],
  "step of neighbouring sessions": ["pair of sessions in a row", "pairs of sessions in a row"],
  "combo with this figure": ["combo with this figure", "combos with this figure"],
  "pace run": ["pace run", "pace runs"],
  "pair of runs": ["pair of runs", "pairs of runs"],
  "pair of evenings in a row": ["pair of evenings in a row", "pairs of evenings in a row"],
  "pair of neighbouring runs": ["pair of runs in a row", "pairs of runs in a row"],
  "different place": ["different place", "different places"],
  "forecast that came due": ["forecast that came due", "forecasts that came due"],
  "target that came due": ["target that came due", "targets that came due"],
};

const plainCauses: Readonly<Record<PlainCause, string>> = {
  "no target": "no target for this session",
  "no PB before": "no personal best before it",
  "nothing to measure a session against":
    "no target, no reference lap and no PB from before this session to measure against",
  "nothing to measure a period against":
    "no target, no reference lap and no PB from before a session to measure it against",
  "no figure yet": "no figure yet to compare with the target",
  "no figure at the setting": "no figure was known on the day the target was set",
  "reached at the setting": "the target was reached on the day it was set",
  "already reached": "you have driven that time already, so no chance is given",
  "level there already": "your level is there already, so no chance is given",
  "change too long ago": "the change lies before the sessions that are looked at",
  "more than a year away": "no forecast looks further than a year",
  "date to come": "its date is still to come",
  "target gone": "its target was deleted before it came due",
  "page turned before its date": "a new page was begun before its date: times no longer compare",
  "nothing driven lately": "nothing was driven in the last six weeks, so nothing is forecast",
  "no two laps in a row": "needs two pace laps of one run in a row, has none",
  "no pace run before": "no pace run before it in this session",
  "not seen in a replay": "nobody has looked at it in a replay yet",
  "both runs the same": "all laps of both runs are the same",
  "the most driven": "the most driven",
  "all at one time": "needs sessions at different times",
  "no usual lap on both sides": "no usual lap before and after it that can be compared",
  "sessions that do not differ": "all sessions are the same, so there is nothing to measure by",
  "pairs that do not differ": "needs pairs in both orders, and laps that differ",
  "all values equal": "all values are equal: there is no curve",
  "along a step": "the points lie along a step: they show no power curve",
  "along a line or a step": "the points lie along a line or a step: they show no curve",
};

const notCompared: Readonly<Record<NotCompared, string>> = {
  guest: "someone else drove",
  warmUp: "warm-up laps are not compared",
  drill: "laps of a drill are not compared",
  test: "runs of a rig test are compared only with each other",
  easy: "laps at easy or learning effort are not compared",
  wet: "damp and wet laps are compared only with each other",
  race: "race laps are not compared with practice",
  "partly written": "not every lap of this run is written down",
};

/**
 * Why a figure is not given, as it stands after a colon.
 * @example sayReason({ needs: 5, of: "pace lap", has: 3, run: 2 }) // "needs 5 pace laps, has 3 in run 2"
 * @example sayReason({ needs: 2, of: "session", each: { needs: 5, of: "pace lap" }, has: 0 })
 * // "needs 2 sessions with 5 pace laps each": none is not said, for shorter sessions there may be
 * @example sayReason({ because: "no target" }) // "no target for this session"
 */
export function sayReason(reason: Reason): string {
  if (!("needs" in reason)) return sayCause(reason);
  const { needs, of, has } = reason;
  const some = has === 0 && reason.each !== undefined ? "" : `, has ${has}`;
  return `needs ${needs} ${thingsOf(reason, names[of][needs === 1 ? 0 : 1])}${some}${whereOf(reason)}`;
}

/**
 * The same as a finding.
 * @example sayTooFew({ needs: 5, of: "pace lap", has: 3 }) // "Not enough pace laps yet: 3 of 5"
 * @example sayTooFew({ because: "no target" }) // "No target for this session"
 */
export function sayTooFew(reason: Reason): string {
  return asSentence(sayLacking(reason));
}

/** The finding as it stands inside a sentence: "not enough pace laps yet: 3 of 5" */
export function sayLacking(reason: Reason): string {
  if (!("needs" in reason)) return sayCause(reason);
  const { needs, of, has } = reason;
  const where = whereOf(reason);
  return needs === 1
    ? `no ${thingsOf(reason, names[of][0])} yet${where}`
    : `not enough ${thingsOf(reason, names[of][1])} yet: ${has} of ${needs}${where}`;
}

/**
 * The same in a cell of a table, where the head says of what.
 * @example sayMissing({ needs: 4, of: "session of each kind", has: 1 }) // "too few sessions: 1 of 4"
 */
export function sayMissing(reason: Reason): string {
  if (!("needs" in reason)) return asSentence(sayCause(reason));
  const { needs, of, has } = reason;
  return `too few ${of === "session of each kind" ? "sessions" : names[of][1]}: ${has} of ${needs}`;
}

/**
 * How many laps a run lacks.
 * @example sayLapsToGo(1, 5) // "four more laps for a verdict"
 */
export function sayLapsToGo(has: number, needs: number): string {
  const more = needs - has;
  return `${inWords(more)} more ${more === 1 ? "lap" : "laps"} for a verdict`;
}

interface NotComparedFigure {
  readonly known: false;
  readonly reason: Extract<Because, { readonly because: "not compared" }>;
}

/** Why the laps of a run are not compared with others: "warm-up laps are not compared" */
export function sayNotCompared(run: NotCompared): string {
  return notCompared[run];
}

/** Whether a run is of a kind that is compared with no other, however many laps follow. */
export function isNotCompared(figure: Figure<unknown>): figure is NotComparedFigure {
  return !figure.known && "because" in figure.reason && figure.reason.because === "not compared";
}

function thingsOf({ each }: Shortage, name: string): string {
  if (each === undefined) return name;
  return `${name} with ${each.needs} ${names[each.of][each.needs === 1 ? 0 : 1]} each`;
}

function whereOf({ where, period, run, rough }: Shortage): string {
  const inBest = where === "in the best session" ? "in its best session" : where;
  const places = [inBest, run && `in run ${run}`, period && `in the period ${period}`];
  const said = places.flatMap((place) => (place ? [` ${place}`] : [])).join("");
  return rough === undefined ? said : `${said}; ${rough} from memory or with fewer decimals`;
}

function sayCause(reason: Because): string {
  switch (reason.because) {
    case "nothing to find":
      return `there is nothing to find: the gain is ${reason.gainMs} ms`;
    case "place not above zero":
      return `a power of x needs x above 0, the smallest is ${reason.smallest}`;
    case "not compared":
      return notCompared[reason.run];
    case "test stopped early":
      return `stopped after ${reason.pairs} of ${reason.planned} pairs: an estimate, no claim`;
    case "pairs not here":
      return `${reason.pairs} of ${reason.planned} pairs are in this logbook: an estimate, no claim`;
    case "not above zero":
    case "below zero":
    case "out of range":
    case "more than half a circle":
    case "side screens seen from behind":
    case "side screens meet":
    case "peak cut off":
    case "top speed under the approach":
    case "apex outside the corner":
    case "car wider than the road":
    case "more unused than there is":
    case "straights too short":
      return sayWrongMeasure(reason);
    default:
      return plainCauses[reason.because];
  }
}
