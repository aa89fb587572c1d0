import { describe, expect, test } from "vitest";
import { median, sessionDigest, suggestedTargets, targetOutlook } from "#stats";
import { sayTargetChance } from "#words";
import { combos, settingEffects } from "../../../demo-data/combos.ts";
import { chanceFrom, driveSession } from "../../../demo-data/drivers.ts";
import { plainBest } from "../../../demo-data/plainReading.ts";
import { reviewOf, rows, runsOf, truth } from "./theDemo.ts";

const targetsOf = (comboId: string) => rows.targets.filter((target) => target.comboId === comboId);

describe("what Targets says of the demo, against the laps themselves", () => {
  test("of a target missed while the PB stood still, the best lap of the weeks it ran is told", () => {
    const { comboId } = truth.combos.moorSingle;
    const [target] = targetsOf(comboId);
    if (target?.by === undefined) throw new Error("the single-seater has a target with a date");
    const { setOn, by } = target;
    // It was set late in the evening of its first day, after that evening's laps.
    const span = rows.sessions.filter((one) => one.comboId === comboId && one.date > setOn && one.date <= by);
    const best = plainBest(span.flatMap(({ id }) => runsOf(id)));
    expect(span.length).toBeGreaterThan(3);
    const review = reviewOf("moorSingle");
    const state = review.targets.find((one) => one.target.id === target.id);
    expect(state).toMatchObject({ standing: { kind: "missed" }, closest: { value: best?.ms } });
    expect(best?.ms).toBeGreaterThan(review.bests.findLast(({ at }) => at < target.setAt)?.ms ?? 0);
  });

  test("the usual lap wanted is called likely, and the generator's own driver reaches it about as often", () => {
    const { comboId, practice } = truth.combos.ringHatch;
    const target = targetsOf(comboId).find(({ kind }) => kind === "median");
    const [preferences] = rows.preferences;
    if (target?.by === undefined || preferences === undefined) throw new Error("the target has a date");
    const { value, by } = target;
    const page = rows.sessions
      .filter((session) => session.comboId === comboId)
      .map((session) => sessionDigest(session, runsOf(session.id), preferences));
    const today = truth.lastDay;
    const outlook = targetOutlook({ comboId, page, today, kind: "median", value, by });
    if (!outlook.known || outlook.value.byDate === undefined) throw new Error("a chance is known");
    const { byDate, rate } = outlook.value;
    expect(sayTargetChance(byDate.chance, by)).toMatch(/^Likely by Sun 20 Dec 2026: 16 chances in 20\./);

    const laps = Math.round(rate.lapsASession);
    const driven = page.reduce((sum, { timedDriven }) => sum + timedDriven, 0);
    const [driver] = combos.ringHatch.drivers;
    const chance = chanceFrom(7);
    const isReached = () =>
      Array.from({ length: byDate.sessions }, (_, number) => {
        const session = { lapsBefore: driven + number * laps, laps, extra: settingEffects.gain.share };
        return median(driveSession(driver, session, chance).slice(3)) ?? Number.POSITIVE_INFINITY;
      }).some((usual) => usual <= value);
    const futures = Array.from({ length: 1000 }, isReached);
    const share = futures.filter(Boolean).length / futures.length;
    expect(value).toBeGreaterThan(practice.floorMs);
    // One driver is no calibration: who learns as this one does may also have stopped, so the forecast promises less than comes.
    expect(byDate.chance).toBeLessThan(share + 0.05);
    expect(byDate.chance).toBeGreaterThan(share - 0.2);
  });

  test("of the combo with two sessions nothing is said but what is missing", () => {
    const { comboId } = truth.combos.ringTrainer;
    const [preferences] = rows.preferences;
    if (preferences === undefined) throw new Error("the demo has preferences");
    const page = rows.sessions
      .filter((session) => session.comboId === comboId)
      .map((session) => sessionDigest(session, runsOf(session.id), preferences));
    const by = "2026-12-20";
    const today = truth.lastDay;
    const asked = { comboId, page, today, kind: "best", value: 70_000, by } as const;
    const missing = { needs: 3, of: "session", each: { needs: 5, of: "pace lap" }, has: 2 };
    expect(targetOutlook(asked)).toEqual({ known: false, reason: missing });
    expect(suggestedTargets(asked)).toEqual({ known: false, reason: missing });
  });
});
