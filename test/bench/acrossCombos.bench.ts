/** All combos side by side, out of ready digests: 3 combos and 200, ten sessions of forty laps each. */
import { bench, describe } from "vitest";
import { acrossCombos, comboStanding, seasonLevel, sessionDigest } from "#stats";
import { normalAt } from "../../src/stats/random/draws.ts";
import { aRun, aSession, choices } from "../unit/stats/someRows.ts";

function combos(count: number) {
  return Array.from({ length: count }, (_, combo) => ({
    comboId: `combo ${combo}`,
    references: [],
    pages: [],
    targets: [],
    digests: Array.from({ length: 10 }, (_, session) => {
      const day = combo * 7 + session;
      const times = Array.from({ length: 40 }, (_, lap) =>
        Math.round(84_000 - 20 * session + 300 * normalAt(5, combo, session, lap)),
      );
      return sessionDigest(aSession(day), [aRun(1, times, { sessionId: `session ${day}` })], choices);
    }),
  }));
}

const today = "2030-01-01";
const few = combos(3);
const many = combos(200);

/** On the day the last of them was driven, when ten of the combos have sessions in the twelve weeks before. */
const lately =
  many
    .map(({ digests }) => digests.at(-1)?.date ?? "")
    .sort()
    .at(-1) ?? today;
const keptOn = (day: string) =>
  many.map((combo) => ({
    ...combo,
    season: seasonLevel(comboStanding({ ...combo, today: day }).history, day),
  }));
const kept = keptOn(lately);

describe("all combos side by side", () => {
  bench("3 combos", () => {
    acrossCombos(few, today);
  });

  bench("200 combos", () => {
    acrossCombos(many, today);
  });

  bench("200 combos, some driven lately, asked for the first time", () => {
    acrossCombos(many, lately);
  });

  bench("200 combos, some driven lately, their levels kept", () => {
    acrossCombos(kept, lately);
  });
});
