/**
 * What the page of a session works out at each stored lap, in the 31st run of an evening: its figures and how far the plan's line
 * is met, which the lap waits for, and its strips, which follow behind.
 */
import { bench, describe } from "vitest";
import type { Lap, PlannedRun, Run } from "#domain";
import { planTonight } from "../../src/screens/log/plan/planTonight.ts";
import { sessionFigures } from "../../src/screens/log/session/sessionFigures.ts";
import { sessionStrips } from "../../src/screens/log/session/sessionStrips.ts";
import { normalAt } from "../../src/stats/random/draws.ts";
import { aSessionPage } from "../support/aSessionPage.ts";

const stamps = { createdAt: 1, updatedAt: 1 };
const runsDriven = 30;
const lapsOfRun = 10;
const linesPlanned = 5;

const lap = (run: number, n: number): Lap => ({
  id: `l${run}-${n}`,
  n,
  ms: Math.round(84_000 + 400 * normalAt(1, run * lapsOfRun + n)),
  decimals: 3,
  source: "typed",
  remarks: [],
  ...stamps,
});

const runs = Array.from(
  { length: runsDriven + 1 },
  (_, at): Run => ({
    id: `r${at + 1}`,
    sessionId: "s",
    comboId: "k",
    n: at + 1,
    startedAt: 1 + at,
    ...(at < runsDriven && { endedAt: 2 + at }),
    line: `line${at % linesPlanned}`,
    kind: "pace",
    effort: "full",
    surface: "dry",
    note: "",
    laps: Array.from({ length: at < runsDriven ? lapsOfRun : 1 }, (_, n) => lap(at, n + 1)),
    ...stamps,
  }),
);

const plan = Array.from(
  { length: linesPlanned },
  (_, at): PlannedRun => ({
    ...{ id: `line${at}`, purpose: "Equal laps", laps: 60, rule: "repeatability" },
    check: { figure: at % 2 === 0 ? "scatter" : "clean", value: 300 },
  }),
);
const data = aSessionPage(runs);
const pb = { ms: 83_600, decimals: 3 };
const { shown, standingId } = sessionFigures(data, pb);

describe("a lap at Enter, after 30 runs of ten laps", () => {
  bench("figures of the page", () => {
    sessionFigures(data, pb);
  });

  bench("how far the plan is met", () => {
    planTonight({ plan }, runs, runs.at(-1), data.preferences);
  });

  bench("its strips", () => {
    sessionStrips({ shown, preferences: data.preferences, pb, standingId, targetMs: 83_500 });
  });
});
