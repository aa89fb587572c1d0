import { describe, expect, test } from "vitest";
import { plainBest } from "../../../demo-data/plainReading.ts";
import { figureAt } from "../../../src/screens/targets/targetFigures.ts";
import { targetState } from "../../../src/screens/targets/targetStanding.ts";
import { reviewOf, rows, runsOf, truth } from "./theDemo.ts";

const targetsOf = (comboId: string) => rows.targets.filter((target) => target.comboId === comboId);

describe("what Targets says of the demo, against the laps themselves", () => {
  test("of a target missed while the PB stood still, the best lap of the weeks it ran is told", () => {
    const { comboId } = truth.combos.ashSingle;
    const [target] = targetsOf(comboId);
    if (target?.by === undefined) throw new Error("the single-seater has a target with a date");
    const { setOn, by } = target;
    // It was set late in the evening of its first day, after that evening's laps.
    const span = rows.sessions.filter((one) => one.comboId === comboId && one.date > setOn && one.date <= by);
    const best = plainBest(span.flatMap(({ id }) => runsOf(id)));
    expect(span.length).toBeGreaterThan(3);
    const review = reviewOf("ashSingle");
    const { standing } = targetState(target, review, Number.NEGATIVE_INFINITY, truth.lastDay);
    expect(standing).toMatchObject({ kind: "missed", closest: { ms: best?.ms } });
    expect(best?.ms).toBeGreaterThan(figureAt(review, "best", target.setAt)?.ms ?? 0);
  });
});
