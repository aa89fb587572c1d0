import type { Band } from "../weeks/bands.ts";
import type { SessionEvent } from "../weeks/sessionEvents.ts";
import { endOf, type LevelPosterior, levelPosterior } from "./levelPosterior.ts";
import type { LevelSession } from "./levelSeries.ts";
import { mixtureBelow, mixtureQuantile, type NormalMixture } from "./normalMixture.ts";

/** What was known of the level after each session, without what came later. */
export interface LevelKnown {
  /**
   * Chance that the level lies at a lap time or under it, after the session with this number; undefined where it is one of
   * fewer than two.
   * @param valueMs lap time, ms
   */
  readonly chanceUnder: (session: number, valueMs: number) => number | undefined;
  /** The level after that session, ms, with 50 and 90 % bands; undefined where it is one of fewer than two. */
  readonly after: (session: number) => Band | undefined;
}

const LEAST_SESSIONS = 2;

/**
 * The level as it was known after each session of a page: an answer of a past day stays what it was. Worked out when it is
 * asked for, once a session. Our methods, §5.
 * @param sessions of one page with a median, oldest first
 * @param eventsUpTo events known after the session with a number, between it and those before it
 */
export function levelKnown(
  sessions: readonly LevelSession[],
  eventsUpTo: (session: number) => readonly SessionEvent[],
): LevelKnown {
  const made = new Map<number, LevelPosterior>();
  const known = (session: number) => {
    if (session + 1 < LEAST_SESSIONS) return undefined;
    const posterior =
      made.get(session) ??
      levelPosterior({ sessions: sessions.slice(0, session + 1), events: eventsUpTo(session) });
    made.set(session, posterior);
    return posterior;
  };
  return {
    chanceUnder: (session, valueMs) => {
      const posterior = known(session);
      return posterior && mixtureBelow(lastLevel(posterior), valueMs / posterior.series.usual - 1, 1);
    },
    after: (session) => {
      const posterior = known(session);
      return posterior && levelAfter(posterior);
    },
  };
}

/** The level after the last session, ms, with 50 and 90 % bands: the one figure for what the usual lap is. */
export function levelAfter(posterior: LevelPosterior): Band {
  const mixture = lastLevel(posterior);
  const ms = (share: number) => posterior.series.usual * (1 + mixtureQuantile(mixture, share));
  return { low: ms(0.05), lowHalf: ms(0.25), mid: ms(0.5), highHalf: ms(0.75), high: ms(0.95) };
}

/** The same as shares of the lap above the usual one. */
function lastLevel(posterior: LevelPosterior): NormalMixture {
  const { weights } = posterior;
  return {
    weights,
    means: weights.map((_, cell) => endOf(posterior, cell, "l")),
    deviations: weights.map((_, cell) => Math.sqrt(endOf(posterior, cell, "ll"))),
  };
}
