import { keptAnswer, type ReadOnlyLogbook } from "#db";
import type { CalendarDate } from "#domain";
import {
  type ComboForLine,
  comboStanding,
  isDrivenSession,
  type SeasonLevel,
  seasonBegins,
  seasonLevel,
} from "#stats";
import { isSound } from "./isSound.ts";
import { levelVersion } from "./levelVersion.ts";

interface KeptSeason {
  /** The day it was asked on. */
  readonly today: CalendarDate;
  readonly season: SeasonLevel;
}

/** Sessions that the level needs; a combo with fewer asks the book nothing. */
const fewest = { inAll: 4, within: 2 };

/**
 * What the level of a combo did in the twelve weeks up to today, worked out once a day and after every change of the combo.
 * @returns undefined where there are too few sessions to ask: the reason costs nothing
 */
export async function keptSeason(
  book: ReadOnlyLogbook,
  combo: ComboForLine,
  today: CalendarDate,
): Promise<SeasonLevel | undefined> {
  const driven = combo.digests.filter(isDrivenSession);
  const since = seasonBegins(today);
  const within = driven.filter(({ date }) => date >= since).length;
  if (driven.length < fewest.inAll || within < fewest.within) return undefined;
  const isWhole = (answer: unknown): answer is KeptSeason => isSeason(answer) && answer.today === today;
  const { season } = await keptAnswer(
    book,
    combo.comboId,
    { name: "season", methodVersion: levelVersion, isWhole },
    async () => ({ today, season: seasonLevel(comboStanding({ ...combo, today }).history, today) }),
  );
  return season;
}

/** By what is read of it. */
function isSeason(answer: unknown): answer is KeptSeason {
  const { today, season } = (answer ?? {}) as Partial<KeptSeason>;
  if (typeof today !== "string" || typeof season !== "object" || season === null) return false;
  const { gain, line } = season;
  if (!Array.isArray(line) || typeof gain !== "object" || gain === null || !isSound(line)) return false;
  return gain.known ? isSound(gain.value) : typeof gain.reason === "object" && gain.reason !== null;
}
