import { expect, test } from "vitest";
import { known, unknown } from "#domain";
import type { ComboReview } from "#stats";
import { sayOneEvening } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const on = { today: "2026-11-29" };
const reviewed = (off: number, isMostlyAssumption = false) =>
  ({
    history: [{ date: "2026-11-26", medianMs: 84_100 + off }],
    curve: known({ now: { mid: 84_100 }, typicalError: 250, worthwhile: 84.1, isMostlyAssumption }),
  }) as unknown as Pick<ComboReview, "curve" | "history">;

test("an evening inside the typical error is one like others, one outside is worth a look", () => {
  expect(sayOneEvening(reviewed(120), on)).toBe(
    "26 Nov was an evening like others: 0.12 s slower than your level, and a single one is often 0.25 s off it. Changes of the level under 0.08 s are too small to talk about.",
  );
  expect(sayOneEvening(reviewed(-250), on)).toMatch(/^26 Nov was an evening like others: 0\.25 s faster/);
  expect(sayOneEvening(reviewed(-251), on)).toMatch(
    /^26 Nov was 0\.25 s faster than your level, more than the 0\.25 s .*: look at what was different\. /,
  );
  expect(sayOneEvening(reviewed(0), on)).toContain("as fast as your level");
  for (const off of [120, -400, 0]) expectWellFormed(sayOneEvening(reviewed(off), on));
});

test("nothing is said while the level is little more than a guess, or unknown", () => {
  expect(sayOneEvening(reviewed(120, true), on)).toBe("");
  const none = { history: [], curve: unknown({ needs: 2, of: "session", has: 0 }) } as const;
  expect(sayOneEvening(none, on)).toBe("");
});
