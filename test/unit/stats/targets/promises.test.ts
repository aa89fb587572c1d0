import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, type TimeKind } from "#domain";
import { type OutlookInput, type SessionDigest, suggestedTargets, targetOutlook } from "#stats";
import { figureForTarget } from "../../../../src/stats/combo/figureForTarget.ts";
import { levelOfPage } from "../../../../src/stats/combo/pageLevel.ts";
import { aDigest, lapsAbout } from "../period/manySessions.ts";

/** A driver of any kind: sessions, what each brings, laps, days between, length of a lap. */
interface Driver {
  readonly page: readonly SessionDigest[];
  readonly kind: TimeKind;
  readonly laps: number | undefined;
}

const driver: fc.Arbitrary<Driver> = fc
  .record({
    base: fc.integer({ min: 55_000, max: 150_000 }),
    steps: fc.array(fc.integer({ min: -400, max: 150 }), { minLength: 3, maxLength: 14 }),
    laps: fc.integer({ min: 6, max: 25 }),
    days: fc.integer({ min: 1, max: 6 }),
    kind: fc.constantFrom("best", "median", "meanOf"),
    inARow: fc.integer({ min: 2, max: 4 }),
  })
  .map(({ base, steps, laps, days, kind, inARow }) => {
    let usual = base;
    const page = steps.map((step, number) => {
      usual += step;
      return aDigest(days * number, lapsAbout(usual, laps, number));
    });
    return { page, kind, laps: kind === "meanOf" ? inARow : undefined };
  });

const dayAfter = ({ page }: Driver) => addDays(page.at(-1)?.date ?? "2026-01-01", 1);
const nowOf = ({ page, kind, laps }: Driver) =>
  figureForTarget({ kind, laps }, page, () => levelOfPage(page))?.value ?? Number.NaN;

/** The outlook of a target so many ms under the figure now, so many days ahead; undefined where it is reached already. */
function outlookOf(who: Driver, under: number, days: number, more: Partial<OutlookInput> = {}) {
  const { page, kind, laps } = who;
  const today = dayAfter(who);
  const value = Math.round(nowOf(who)) - under;
  const by = addDays(today, days);
  const outlook = targetOutlook({ comboId: "c", page, today, kind, laps, value, by, ...more });
  if (outlook.known) return outlook.value;
  expect(outlook.reason).toEqual({ because: "already reached" });
  return undefined;
}
const chanceOf = (...asked: Parameters<typeof outlookOf>) => outlookOf(...asked)?.byDate?.chance ?? 1;

const under = fc.integer({ min: 1, max: 2500 });
const days = fc.integer({ min: 1, max: 200 });

describe("a chance never falls", () => {
  test("when the target is made easier", () => {
    fc.assert(
      fc.property(driver, under, under, days, (who, one, other, ahead) => {
        const [easy, hard] = [Math.min(one, other), Math.max(one, other)];
        expect(chanceOf(who, easy, ahead)).toBeGreaterThanOrEqual(chanceOf(who, hard, ahead));
      }),
      { seed: 1301, numRuns: 40 },
    );
  });

  test("when the date is moved later", () => {
    fc.assert(
      fc.property(driver, under, days, fc.integer({ min: 1, max: 150 }), (who, ms, ahead, later) => {
        expect(chanceOf(who, ms, ahead + later)).toBeGreaterThanOrEqual(chanceOf(who, ms, ahead));
      }),
      { seed: 1302, numRuns: 40 },
    );
  });

  test("when more sessions are planned", () => {
    const often = fc.double({ min: 0.1, max: 7, noNaN: true });
    fc.assert(
      fc.property(driver, under, days, often, often, (who, ms, ahead, one, other) => {
        const given = (sessionsAWeek: number) =>
          outlookOf(who, ms, ahead, { practice: { sessionsAWeek, lapsASession: 15 } })?.byDate;
        const [few, many] = [given(Math.min(one, other)), given(Math.max(one, other))];
        expect(many?.sessions ?? 1).toBeGreaterThanOrEqual(few?.sessions ?? 1);
        expect(many?.chance ?? 1).toBeGreaterThanOrEqual(few?.chance ?? 1);
      }),
      { seed: 1303, numRuns: 40 },
    );
  });
});

test("steps lie between the figure now and the target, each faster and none sooner than the one before", () => {
  fc.assert(
    fc.property(driver, under, days, (who, ms, ahead) => {
      const steps = outlookOf(who, ms, ahead)?.milestones ?? [];
      const now = Math.round(nowOf(who));
      const times = steps.map((step) => step.ms);
      if (times.length > 0) expect(times.at(-1)).toBe(now - ms);
      times.forEach((time, index) => {
        expect(time).toBeLessThan(times[index - 1] ?? now + 1);
        expect(time).toBeGreaterThanOrEqual(now - ms);
      });
      // One that no day is known of comes after all that have one.
      const dated = steps.map(({ by }) => by ?? "9999-12-31");
      expect(dated.toSorted()).toEqual(dated);
    }),
    { seed: 1304, numRuns: 40 },
  );
});

test("what is suggested has, asked about as a target, the chance that it is suggested for", () => {
  let suggestions = 0;
  fc.assert(
    fc.property(driver, days, (who, ahead) => {
      const { page, kind, laps } = who;
      const today = dayAfter(who);
      const by = addDays(today, ahead);
      const found = suggestedTargets({ comboId: "c", page, today, kind, laps, by });
      if (!found.known) return;
      for (const [one, wanted] of [
        [found.value.fair, 0.5],
        [found.value.stretch, 0.2],
      ] as const) {
        if (one === undefined) continue;
        suggestions += 1;
        const asked = targetOutlook({ comboId: "c", page, today, kind, laps, by, value: one.ms });
        const chance = asked.known ? asked.value.byDate?.chance : undefined;
        expect(chance).toBe(one.chance);
        expect(Math.abs((chance ?? 1) - wanted)).toBeLessThanOrEqual(0.03);
      }
    }),
    { seed: 1305, numRuns: 60 },
  );
  expect(suggestions).toBeGreaterThan(60);
});
