/** What a lap is judged by: the nearest of all that is known. */

import { leastForSpread } from "#domain";
import { medianOfSorted } from "#numbers";
import type { EntryContext } from "./context.ts";

/** What one lap is judged by. Times in ms. */
export interface Ground {
  /** As it stands in a sentence before its time. */
  readonly name: string;
  /** The usual times, from fastest to slowest; the same twice for one usual lap. */
  readonly fastest: number;
  readonly slowest: number;
  /** A lap under this or over that is odd whatever its remarks. */
  readonly under: number;
  readonly over: number;
  /** Sorted times of laps like this one, where it is strictly judged by them. */
  readonly own?: readonly number[] | undefined;
  /** It does not rest on one or two laps of this evening alone. */
  readonly isSure: boolean;
}

/** Sorted times of the laps like the one typed, of its run and of its session. */
export type LikeTimes = { readonly [K in "run" | "session"]: readonly number[] };

/** Laps a usual needs to stand on its own. */
export const fewestForUsual = 3;
const farTimes = 3;
/** Average speeds of a lap in km/h, spins and standing starts included. Common practice, no source; wide on purpose. */
const slowestSpeed = 30;
const fastestSpeed = 450;
/** Laps of any circuit take as long as this, ms. Common practice, no source; wide on purpose. */
const shortestLap = 10_000;
const longestLap = 1_800_000;

/**
 * What a lap is judged by: the first that is known of this run (from five laps on), this session, the page's laps of
 * the same surface and kind, its PB, its other laps, other cars on the layout, the layout's length, the driver's other
 * combos. Where nothing is known, laps of any circuit.
 */
export function groundOf(
  context: Pick<EntryContext, "known" | "pbMs" | "isPaceRun" | "isDry">,
  like: LikeTimes,
): Ground {
  const { known, pbMs, isPaceRun: isPace = true, isDry = true } = context;
  const { page = [], here = [], layout = [], lengthMetres, elsewhere = [] } = known ?? {};
  // Laps of drills, warm-ups and races differ on purpose: a few of them say nothing yet.
  const counts = (times: readonly number[]) => times.length >= (isPace ? 1 : leastForSpread);
  const isPbOlder = pbMs !== undefined && !like.session.includes(pbMs);
  const sessionIsSure =
    like.session.length >= fewestForUsual || page.length > 0 || here.length > 0 || isPbOlder;
  const isPart = like.run.length >= leastForSpread && like.run.length < like.session.length;
  if (isPart) return ownGround("this run's usual lap", like.run, true);
  const ofSession = nameOf(like.session, "this session's usual lap", "this session's laps");
  const ofPage = nameOf(page, "your usual lap here", "your laps here");
  if (counts(like.session)) return ownGround(ofSession, like.session, sessionIsSure);
  if (counts(page)) return ownGround(ofPage, page, true);
  if (pbMs !== undefined && isPace && isDry) return ownGround("your PB", [pbMs], true);
  if (like.session.length > 0) return ground(ofSession, usualOf(like.session));
  if (page.length > 0) return ground(ofPage, usualOf(page));
  if (here.length > 0) return ground("your other laps here", usualOf(here));
  if (pbMs !== undefined) return ground("your PB", pbMs);
  if (layout.length > 0)
    return ground("your laps here with other cars", Math.min(...layout), Math.max(...layout));
  if (lengthMetres !== undefined) return groundOfLength(lengthMetres);
  if (elsewhere.length > 0)
    return ground("your laps elsewhere", Math.min(...elsewhere), Math.max(...elsewhere));
  return { ...ground("laps of any circuit", shortestLap, longestLap), under: shortestLap, over: longestLap };
}

/** Two laps are judged by each for itself, and neither is their usual lap. */
const nameOf = ({ length }: readonly number[], usual: string, both: string) => (length === 2 ? both : usual);

/** Of two laps the faster one is believed: a lap may take any time longer than it should, but not shorter. */
const usualOf = (sorted: readonly number[]) =>
  (sorted.length === 2 ? sorted[0] : medianOfSorted(sorted)) as number;

function ground(name: string, fastest: number, slowest = fastest): Ground {
  return { name, fastest, slowest, under: fastest / farTimes, over: slowest * farTimes, isSure: true };
}

function ownGround(name: string, own: readonly number[], isSure: boolean): Ground {
  // Of two laps nothing says yet which is the slip: no later lap is out of reach of the slower one.
  const slowest = own.length === 2 ? own[1] : undefined;
  return { ...ground(name, usualOf(own), slowest), own, isSure };
}

function groundOfLength(metres: number): Ground {
  const fastest = (metres * 3_600) / fastestSpeed;
  const slowest = (metres * 3_600) / slowestSpeed;
  const name = `laps of ${metres.toLocaleString("en")} m`;
  return { ...ground(name, fastest, slowest), under: fastest, over: slowest };
}
