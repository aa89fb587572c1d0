import type { SessionEvent } from "../weeks/sessionEvents.ts";
import { endOf, levelPosterior } from "./levelPosterior.ts";
import type { LevelSession } from "./levelSeries.ts";
import { mixtureBelow, type NormalMixture } from "./normalMixture.ts";

/** What was known of the level after each session, without what came later. */
export interface LevelKnown {
  /**
   * Chance that the level lies at a lap time or under it, after the session with this number; undefined where it is one of
   * fewer than two.
   * @param valueMs lap time, ms
   */
  readonly chanceUnder: (session: number, valueMs: number) => number | undefined;
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
  const made = new Map<number, { readonly usual: number; readonly mixture: NormalMixture }>();
  const after = (session: number) => {
    const old = made.get(session);
    if (old !== undefined) return old;
    const posterior = levelPosterior({
      sessions: sessions.slice(0, session + 1),
      events: eventsUpTo(session),
    });
    const { weights, series } = posterior;
    const known = {
      usual: series.usual,
      mixture: {
        weights,
        means: Float64Array.from(weights, (_, cell) => endOf(posterior, cell, "l")),
        deviations: Float64Array.from(weights, (_, cell) => Math.sqrt(endOf(posterior, cell, "ll"))),
      },
    };
    made.set(session, known);
    return known;
  };
  return {
    chanceUnder: (session, valueMs) => {
      if (session + 1 < LEAST_SESSIONS) return undefined;
      const { usual, mixture } = after(session);
      return mixtureBelow(mixture, valueMs / usual - 1, 1);
    },
  };
}
