import type { CornerReview, Id, Session } from "#domain";
import type { ComboKey } from "./combos.ts";
import { instantAt } from "./season.ts";
import type { Stamp } from "./stamps.ts";

interface Judged extends Pick<CornerReview, "on" | "corners"> {
  readonly combo: ComboKey;
  /** The evening whose replay was looked at, where that is another day. */
  readonly of?: string;
}

/**
 * Metres left unused, judged from replays: corner 5 of the Ring gets better, corner 11 does not; at Tessemoor the exit of 4
 * does. The last two of each are four weeks apart. The trainer, driven last, was looked at once.
 */
const judged: readonly Judged[] = [
  {
    combo: "ringHatch",
    on: "2026-09-13",
    corners: [
      {
        number: 5,
        entry: 2.5,
        apex: 1,
        exit: 2.5,
        braking: "late",
        throttle: "early",
        note: "Turned in too soon, so no road left to use at the exit.",
      },
      { number: 8, entry: 1.5, apex: 0.5, exit: 1 },
      { number: 11, entry: 1, apex: 0.5, exit: 2, throttle: "twice" },
    ],
  },
  {
    combo: "ringHatch",
    on: "2026-10-20",
    corners: [
      { number: 5, entry: 1.8, apex: 0.8, exit: 2.2, braking: "late", throttle: "twice" },
      { number: 8, entry: 1.5, apex: 0.5, exit: 1, braking: "right" },
      {
        number: 11,
        entry: 1,
        apex: 0.5,
        exit: 2,
        throttle: "twice",
        isOffLine: true,
        note: "Same as in September.",
      },
    ],
  },
  {
    combo: "ringHatch",
    on: "2026-11-17",
    corners: [
      { number: 1, entry: 0.5, apex: 0.3, exit: 0.5, braking: "early" },
      { number: 5, entry: 0.8, apex: 0.3, exit: 0.9, braking: "right", throttle: "right" },
      { number: 8, entry: 0.9, apex: 0.3, exit: 0.6, throttle: "right" },
      { number: 11, entry: 1, apex: 0.6, exit: 1.8, braking: "early", throttle: "late" },
    ],
  },
  {
    combo: "moorSingle",
    on: "2026-10-18",
    corners: [
      { number: 4, entry: 1.2, apex: 0.5, exit: 3.2, braking: "late", throttle: "late" },
      { number: 7, entry: 0.9, apex: 0.9, exit: 0.9, throttle: "right" },
    ],
  },
  {
    combo: "moorSingle",
    on: "2026-11-15",
    of: "2026-11-13",
    corners: [
      {
        number: 4,
        entry: 1,
        apex: 0.4,
        exit: 2,
        braking: "late",
        throttle: "late",
        note: "Two metres still.",
      },
      { number: 7, entry: 0.9, apex: 0.4, exit: 0.7, throttle: "right" },
    ],
  },
  {
    combo: "ringTrainer",
    on: "2026-11-22",
    corners: [
      { number: 3, entry: 0.9, apex: 0.4, exit: 0.9, braking: "early" },
      { number: 5, entry: 1.8, apex: 0.9, exit: 1.8, braking: "late", throttle: "twice" },
      { number: 9, entry: 0.9, apex: 0.9, exit: 0, throttle: "early" },
    ],
  },
];

/** The corner reviews, each of the session of its day or of the evening it names. */
export function makeReviews(
  stamp: Stamp,
  comboIds: Readonly<Record<ComboKey, Id>>,
  sessions: readonly Session[],
): CornerReview[] {
  return judged.map(({ combo, of, ...review }) => {
    const comboId = comboIds[combo];
    const session = sessions.find((one) => one.comboId === comboId && one.date === (of ?? review.on));
    if (session === undefined) throw new RangeError(`no session to review on ${of ?? review.on}`);
    const at = of === undefined ? session.updatedAt + 420_000 : instantAt(review.on, "11:10");
    return { ...stamp(at), comboId, sessionId: session.id, ...review };
  });
}
