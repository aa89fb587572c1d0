import type { Corner, Figure, Straight } from "#domain";
import { straightOf } from "#physics";
import { cornerBefore } from "./cornerFacts.ts";
import type { MistakesAtCorner } from "./mistakesAtCorners.ts";
import type { UnusedRoad } from "./unusedRoad.ts";

/** Why a corner is worth working on, as data; the strongest first. */
export type WhyCorner =
  | {
      readonly why: "straight after";
      readonly after: Straight;
      /** The straight is said to be long, its length is not known. */
      readonly isAssumed: boolean;
    }
  | { readonly why: "mistakes"; readonly mistakes: number; readonly laps: number }
  | { readonly why: "largest gap"; readonly at: "entry" | "apex" | "exit"; readonly metres: number }
  | { readonly why: "sector"; readonly sector: number }
  | { readonly why: "last of its chain" };

/** Metres from which a straight of known length is called long: half way between a middling and a long one. */
const LONG = (straightOf("middling", undefined) + straightOf("long", undefined)) / 2;

interface WhyInput {
  readonly number: number;
  /** As the layout has them. */
  readonly corners: readonly Corner[];
  readonly unused: Figure<UnusedRoad>;
  readonly mistakes: MistakesAtCorner;
  /** The sector that holds most time, from 1. */
  readonly sector: number | undefined;
}

/**
 * What makes a corner worth working on. What costs more of unused road and mistakes comes first; with the road come the long
 * straight after it, the end of a chain, whose exit counts for all of it, and the largest gap; last the sector.
 */
export function whyCorner({ number, corners, unused, mistakes, sector }: WhyInput): WhyCorner[] {
  const corner = corners.find((one) => one.number === number) ?? { number };
  const road = unused.known && !unused.value.nothingToGain ? unused.value : undefined;
  const ofRoad: WhyCorner[] =
    road === undefined
      ? []
      : [
          ...straightAfter(corner),
          ...chainEnd(corner, corners),
          { why: "largest gap", at: road.largest.at, metres: road.largest.metres },
        ];
  const ofMistakes: WhyCorner[] =
    mistakes.mistakes === 0 ? [] : [{ why: "mistakes", mistakes: mistakes.mistakes, laps: mistakes.laps }];
  const isMoreLost = (mistakes.ms ?? 0) > (road?.ms.mid ?? 0);
  const isInSector = sector !== undefined && corner.sector === sector;
  return [
    ...(isMoreLost ? [...ofMistakes, ...ofRoad] : [...ofRoad, ...ofMistakes]),
    ...(isInSector ? [{ why: "sector", sector } as const] : []),
  ];
}

function straightAfter({ after, afterLength }: Corner): WhyCorner[] {
  if ((after === undefined && afterLength === undefined) || straightOf(after, afterLength) < LONG) return [];
  return [{ why: "straight after", after: "long", isAssumed: afterLength === undefined }];
}

function chainEnd({ number, after }: Corner, corners: readonly Corner[]): WhyCorner[] {
  const isEnd = after !== "none" && cornerBefore(corners, number)?.after === "none";
  return isEnd ? [{ why: "last of its chain" }] : [];
}
