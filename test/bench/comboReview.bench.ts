/** The review of one combo at 100 and at 100,000 laps, out of ready digests; the larger has to stay under 300 ms. */
import { bench, describe } from "vitest";
import { comboReview, sessionDigest } from "#stats";
import { normalAt } from "../../src/stats/random/draws.ts";
import { aRun, aSession, choices } from "../unit/stats/someRows.ts";

function digests(sessions: number) {
  return Array.from({ length: sessions }, (_, number) => {
    const run = (n: number) =>
      aRun(
        n,
        Array.from({ length: 20 }, (_, lap) => {
          const ms = Math.round(84_000 - number + 300 * normalAt(3, number, n, lap));
          const first = Math.round(ms / 3);
          return { ms, sectors: [first, first, ms - 2 * first] };
        }),
        { sessionId: `session ${number}` },
      );
    return sessionDigest(aSession(number), [1, 2, 3, 4, 5].map(run), choices);
  });
}

const input = {
  comboId: "combo",
  pages: [],
  period: {},
  today: "2030-01-01",
  targets: [],
  references: [],
  preferences: choices,
};
const few = digests(1);
const many = digests(1000);

describe("review of one combo", () => {
  bench("100 laps", () => {
    comboReview({ ...input, digests: few });
  });

  bench("100,000 laps", () => {
    comboReview({ ...input, digests: many });
  });
});
