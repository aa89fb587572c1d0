import { secondsThrough, type TrueCar, type TrueCorner, type TrueGaps } from "./cornerMotion.ts";

/** The combos whose corners were reviewed. */

export type ReviewedCombo = "ringHatch" | "moorSingle";

/** A corner as it truly is, and what of it the driver truly left unused on two days. */
interface TrulyReviewed extends TrueCorner {
  readonly number: number;
  readonly before: TrueGaps;
  readonly now: TrueGaps;
}

/** Two reviews four weeks apart, and what lay behind them. */
interface TrueChange {
  readonly from: string;
  readonly to: string;
  readonly car: TrueCar;
  readonly corners: readonly TrulyReviewed[];
}

/**
 * What is true of the corners that were reviewed twice. The driver judged each gap to within two tenths of a metre (`reviews`),
 * and knows of geometry and car what `places` and `names` say.
 */
export const trueChanges: Readonly<Record<ReviewedCombo, TrueChange>> = {
  ringHatch: {
    from: "2026-10-20",
    to: "2026-11-17",
    car: { width: 1.76, grip: 1.06, braking: 9.2, drive: 3.7, topSpeed: 57 },
    corners: [
      {
        number: 5,
        radius: 22.4,
        width: 10.1,
        angle: 131,
        kerbAtExit: 0.8,
        approach: 135,
        approachSpeed: 24,
        exit: 105,
        before: { entry: 1.9, apex: 0.9, exit: 2.3 },
        now: { entry: 0.9, apex: 0.2, exit: 0.8 },
      },
      {
        number: 8,
        radius: 39,
        width: 10.6,
        angle: 94,
        approach: 290,
        approachSpeed: 44,
        exit: 270,
        before: { entry: 1.6, apex: 0.5, exit: 1.1 },
        now: { entry: 0.8, apex: 0.4, exit: 0.6 },
      },
      {
        number: 11,
        radius: 18.2,
        width: 12,
        angle: 166,
        approach: 310,
        approachSpeed: 25,
        exit: 640,
        before: { entry: 1.1, apex: 0.5, exit: 2 },
        now: { entry: 1, apex: 0.6, exit: 1.9 },
      },
    ],
  },
  moorSingle: {
    from: "2026-10-18",
    to: "2026-11-15",
    car: { width: 1.7, grip: 1.43, braking: 13, drive: 4.6, topSpeed: 63 },
    corners: [
      {
        number: 4,
        radius: 16.3,
        width: 9.1,
        angle: 149,
        approach: 125,
        approachSpeed: 19,
        exit: 590,
        before: { entry: 1.3, apex: 0.6, exit: 3.3 },
        now: { entry: 1.1, apex: 0.4, exit: 1.9 },
      },
      {
        number: 7,
        radius: 23,
        width: 10.2,
        angle: 103,
        approach: 100,
        approachSpeed: 26,
        exit: 110,
        before: { entry: 1, apex: 0.8, exit: 0.9 },
        now: { entry: 0.9, apex: 0.3, exit: 0.8 },
      },
    ],
  },
};

/** What became of the corners from one review to the other: gaps that shrank by at least 0.15 m, and ms a lap. */
export interface CornerTruth {
  readonly from: string;
  readonly to: string;
  readonly corners: readonly {
    readonly number: number;
    readonly before: TrueGaps;
    readonly now: TrueGaps;
    readonly shrank: readonly (keyof TrueGaps)[];
    readonly changeMs: number;
  }[];
  readonly changeMs: number;
}

const clearlyLess = 0.15;

/** The truth about two reviews of a combo, the times walked through the true corners. */
export function cornerTruthOf(key: ReviewedCombo): CornerTruth {
  const { from, to, car, corners } = trueChanges[key];
  const changes = corners.map((corner) => {
    const { number, before, now } = corner;
    const seconds = secondsThrough(corner, car, now) - secondsThrough(corner, car, before);
    return {
      number,
      before,
      now,
      shrank: (["entry", "apex", "exit"] as const).filter((at) => before[at] - now[at] > clearlyLess),
      changeMs: Math.round(seconds * 1000),
    };
  });
  return { from, to, corners: changes, changeMs: changes.reduce((sum, { changeMs }) => sum + changeMs, 0) };
}
