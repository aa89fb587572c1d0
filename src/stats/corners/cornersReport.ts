import { onPage, presentPage } from "#combo";
import {
  type CalendarDate,
  type CornerReview,
  cornersOfSector,
  type Figure,
  type Id,
  type ReferenceLap,
} from "#domain";
import type { CornerFacts, Span } from "#physics";
import { periodAccount } from "../account/periodAccount.ts";
import { sectorAccount } from "../account/sectorAccount.ts";
import { datedBests } from "../bests/datedBests.ts";
import type { ComboQuestion } from "../combo/comboStanding.ts";
import { isDrivenSession } from "../digest/isDrivenSession.ts";
import { sectorsOf } from "../digest/lapsOfDigest.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { Choices } from "../laps/choices.ts";
import { levelGain } from "../level/levelGain.ts";
import type { LevelGain } from "../level/levelOver.ts";
import { pageHistory } from "../period/pageHistory.ts";
import { type ChangeInSum, type CornerChange, cornerChanges } from "./cornerChanges.ts";
import { type CornersOfCombo, cornerFacts } from "./cornerFacts.ts";
import { type CornerHabits, cornerHabits } from "./cornerHabits.ts";
import { type DrivenSession, type MistakesAtCorner, mistakesAtCorners } from "./mistakesAtCorners.ts";
import { reviewsOnPage } from "./reviewsOnPage.ts";
import { sumOf } from "./spans.ts";
import { type UnusedRoad, unusedRoad } from "./unusedRoad.ts";
import { type WhyCorner, whyCorner } from "./whyCorner.ts";

/** One corner in the answer. */
export interface CornerWorth {
  readonly number: number;
  readonly name?: string;
  /** What its sums rest on. */
  readonly facts: CornerFacts;
  /** The newest review that holds gaps of it; a reason where there is none, or where its geometry is wrong. */
  readonly unused: Figure<UnusedRoad>;
  readonly mistakes: MistakesAtCorner;
  readonly change: CornerChange | undefined;
  readonly habits: CornerHabits;
  /** Unused road and mistakes together, ms a lap; undefined where neither is known. */
  readonly worth: Span | undefined;
  readonly why: readonly WhyCorner[];
}

/** Which corner first, what each is worth, and what became of it. */
export interface CornersReport {
  /** In lap order, corners that are only named in remarks or reviews among them. */
  readonly corners: readonly CornerWorth[];
  /** Numbers of those worth something, the most first; then those with mistakes of unknown cost, the most of them first. */
  readonly order: readonly number[];
  /** Reviews of the present page, the newest first. */
  readonly reviews: readonly {
    readonly id: Id;
    readonly on: CalendarDate;
    readonly corners: readonly number[];
  }[];
  /** Sessions and laps whose remarks were looked at. */
  readonly sessions: number;
  readonly laps: number;
  /** What mistakes cost that name no corner, ms a lap; undefined where there is no account. */
  readonly unnamedMs: number | undefined;
  /** Sum of all changes between the two last reviews that share corners, and whether the lap times followed. */
  readonly change: (ChangeInSum & { readonly level: Figure<LevelGain> }) | undefined;
  /** Unused road of all corners together, and the pace line of the account of the same sessions, ms a lap. */
  readonly unusedMs: Span | undefined;
  readonly paceMs: number | undefined;
  /** The sector that holds most time, from 1, and the corners known to lie in it. */
  readonly sector:
    | { readonly sector: number; readonly ms: number; readonly corners: readonly number[] }
    | undefined;
}

/** What the corners of a combo are worth is worked out from. */
export interface CornersInput
  extends Omit<ComboQuestion, "comboId">,
    Pick<CornersOfCombo, "corners" | "car" | "lowestSpeeds"> {
  /** Those of `sessionsForCorners`, with their runs. */
  readonly sessions: readonly DrivenSession[];
  readonly references: readonly ReferenceLap[];
  readonly preferences: Choices;
  /** Of the combo, in any order, without deleted ones. */
  readonly reviews: readonly CornerReview[];
}

/** Sessions whose remarks are looked at. */
const LATEST_SESSIONS = 10;

/** The sessions whose remarks are looked at: the last ten driven of the present page, oldest first. */
export function sessionsForCorners({
  digests,
  pages,
  today,
}: Pick<CornersInput, "digests" | "pages" | "today">): SessionDigest[] {
  return onPage(presentPage(pages, today), digests)
    .filter(isDrivenSession)
    .sort((a, b) => a.startedAt - b.startedAt)
    .slice(-LATEST_SESSIONS);
}

/**
 * Which corner to work on first, what each is worth and why, and what became of them since the review before. Unused road is
 * an estimate from the newest review that looked (`unusedRoad`), mistakes are a part of the time account of the last ten
 * sessions of the page (`mistakesAtCorners`). Our methods, §3 and §9.
 */
export function cornersReport(input: CornersInput): CornersReport {
  const { digests, pages, today, corners, car, lowestSpeeds, preferences } = input;
  const page = presentPage(pages, today);
  const driven = onPage(page, digests).filter(isDrivenSession);
  const reviews = reviewsOnPage(input.reviews, page, digests);
  const combo: CornersOfCombo = { corners, car, lowestSpeeds, reviews };
  const mistakes = mistakesAtCorners(input.sessions, preferences);
  const sector = largestSector(mistakes.digests, corners);
  const reviewed = reviews.flatMap((review) => review.corners.map(({ number }) => number));
  const known = corners.map(({ number }) => number);
  const numbers = [...new Set([...known, ...mistakes.named, ...reviewed])].sort((a, b) => a - b);
  const changes = cornerChanges(numbers, combo);
  const all = numbers.map((number): CornerWorth => {
    const name = corners.find((corner) => corner.number === number)?.name;
    const unused = unusedRoad(number, combo);
    const lost = mistakes.at(number);
    return {
      number,
      ...(name === undefined ? {} : { name }),
      facts: cornerFacts(number, combo),
      unused,
      mistakes: lost,
      change: changes.latest.get(number),
      habits: cornerHabits(number, reviews),
      worth: worthOf(unused, lost),
      why: whyCorner({ number, corners, unused, mistakes: lost, sector: sector?.sector }),
    };
  });
  const change = changes.inSum;
  const road = all.flatMap(({ unused }) => (unused.known ? [unused.value.ms] : []));
  const { account } = periodAccount({
    digests: mistakes.digests,
    bests: datedBests(driven),
    page,
    targets: input.targets,
    references: input.references,
  });
  return {
    corners: all,
    order: orderOf(all),
    reviews: reviews.map((review) => ({
      id: review.id,
      on: review.on,
      corners: review.corners.map(({ number }) => number),
    })),
    sessions: input.sessions.length,
    laps: mistakes.laps,
    unnamedMs: mistakes.unnamedMs,
    change: change && { ...change, level: levelGain(pageHistory(driven, digests), change) },
    unusedMs: road.length === 0 ? undefined : sumOf(road),
    paceMs: account.known ? account.value.pace : undefined,
    sector,
  };
}

function orderOf(corners: readonly CornerWorth[]): number[] {
  const ms = ({ worth }: CornerWorth) => Math.max(0, worth?.mid ?? 0);
  // Those that are told by the same seconds stand in the order of their mistakes.
  const told = (corner: CornerWorth) => Math.round(ms(corner) / 10);
  return corners
    .filter((corner) => ms(corner) > 0 || corner.mistakes.mistakes > 0)
    .sort((a, b) => told(b) - told(a) || b.mistakes.mistakes - a.mistakes.mistakes || ms(b) - ms(a))
    .map(({ number }) => number);
}

/**
 * Unused road and mistakes together; a corner with no mistake and no review is not known to be worth nothing. What mistakes
 * cost is as uncertain as how often they happen: it goes with the ends of their share.
 */
function worthOf(unused: Figure<UnusedRoad>, { mistakes, ms, share }: MistakesAtCorner): Span | undefined {
  const isCostKnown = mistakes > 0 && ms !== undefined;
  if (!unused.known && !isCostKnown) return undefined;
  const mid = Math.max(0, ms ?? 0);
  const oftener = (end: "low" | "high") =>
    share === undefined || share.share === 0 ? mid : Math.round((mid * share[end]) / share.share);
  const lost = { low: oftener("low"), mid, high: oftener("high") };
  return sumOf([lost, ...(unused.known ? [unused.value.ms] : [])]);
}

function largestSector(
  digests: readonly SessionDigest[],
  corners: CornersInput["corners"],
): CornersReport["sector"] {
  const account = sectorAccount(sectorsOf(digests, "paceBests"));
  if (!account.known) return undefined;
  const { largest, sectors } = account.value;
  const ms = sectors[largest]?.gap ?? 0;
  const sector = largest + 1;
  if (ms <= 0) return undefined;
  return { sector, ms, corners: cornersOfSector(corners, sector) };
}
