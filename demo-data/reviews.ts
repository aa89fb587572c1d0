import type { CornerReview, Id, Session } from "#domain";
import type { Stamp } from "./stamps.ts";

/** Metres left unused, judged from replays of three evenings: corner 5 gets better, corner 11 does not. */
const judged: readonly Pick<CornerReview, "on" | "corners">[] = [
  {
    on: "2026-09-13",
    corners: [
      {
        number: 5,
        entry: 2.5,
        apex: 1,
        exit: 2,
        note: "Turned in too soon, so no road left to use at the exit.",
      },
      { number: 8, entry: 1.5, apex: 0.5, exit: 1 },
      { number: 11, entry: 1, apex: 0.5, exit: 2 },
    ],
  },
  {
    on: "2026-10-20",
    corners: [
      { number: 5, entry: 1.5, apex: 0.5, exit: 1.5 },
      { number: 8, entry: 0.5, apex: 0.3, exit: 1 },
      { number: 11, entry: 1, apex: 0.5, exit: 2, note: "Same as in September." },
    ],
  },
  {
    on: "2026-11-12",
    corners: [
      { number: 1, entry: 0.5, apex: 0.3, exit: 0.5 },
      { number: 5, entry: 0.8, apex: 0.3, exit: 1 },
      { number: 11, entry: 1, apex: 0.6, exit: 1.8 },
    ],
  },
];

/** The corner reviews of a combo, each of the session of its day. */
export function makeReviews(stamp: Stamp, comboId: Id, sessions: readonly Session[]): CornerReview[] {
  return judged.map((review) => {
    const session = sessions.find((one) => one.comboId === comboId && one.date === review.on);
    if (session === undefined) throw new RangeError(`no session to review on ${review.on}`);
    return { ...stamp(session.updatedAt + 420_000), comboId, sessionId: session.id, ...review };
  });
}
