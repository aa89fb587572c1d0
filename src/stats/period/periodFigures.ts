import { addCounts, type LapCounts } from "#domain";
import { CONFIDENCE } from "#numbers";
import { timesOf } from "../digest/lapsOfDigest.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { NearTheBest } from "../pace/shareWithinMargin.ts";
import { type Share, wilsonInterval } from "../sample/wilsonInterval.ts";
import { nearSessionBest } from "../session/nearSessionBest.ts";
import { type PracticeAmount, practiceAmount } from "./practiceAmount.ts";

/** What a period says for itself; asked of this one and of the one before alike. */
export interface PeriodFigures {
  readonly sessions: number;
  /** Laps driven, by place: all that a figure leaves out is counted here. */
  readonly counts: LapCounts;
  readonly guestLaps: number;
  readonly mistakes: number;
  readonly drivingMs: number;
  readonly cleanShare: Share | undefined;
  readonly mistakeShare: Share | undefined;
  /** Pace laps near the best one of their own session. */
  readonly nearTheBest: NearTheBest | undefined;
  /** Of older pages too: their laps were practice all the same. */
  readonly practice: PracticeAmount;
}

/**
 * The figures of one period.
 * @param digests of the present page
 * @param driven of all pages
 * @param marginPercent margin of "near the best", in percent
 */
export function periodFigures(
  digests: readonly SessionDigest[],
  driven: readonly SessionDigest[],
  marginPercent: number,
): PeriodFigures {
  const sum = (field: "guestLaps" | "mistakes" | "drivingMs" | "clean" | "timed") =>
    digests.reduce((total, digest) => total + digest[field], 0);
  const counts = addCounts(digests.map((digest) => digest.counts));
  return {
    sessions: digests.length,
    counts,
    guestLaps: sum("guestLaps"),
    mistakes: sum("mistakes"),
    drivingMs: sum("drivingMs"),
    cleanShare: wilsonInterval(sum("clean"), sum("timed"), CONFIDENCE),
    mistakeShare: wilsonInterval(Math.min(sum("mistakes"), counts.driven), counts.driven, CONFIDENCE),
    nearTheBest: nearSessionBest(
      digests.map((digest) => timesOf([digest], "paceBests")),
      marginPercent,
    ),
    practice: practiceAmount(driven),
  };
}
