import { type Logbook, startSession } from "#db";
import type { PlannedRun } from "#domain";
import { aCombo } from "./logPage.tsx";

const id = (n: number) => `01234567-89ab-7cde-8f01-0000000000c${n}`;

/** A warm-up, a drill at corner 5 and a run at pace. */
export const aPlan = [
  {
    id: id(1),
    rule: "warm-up",
    purpose: "Warm up",
    kind: "warm-up",
    effort: "easy",
    laps: 2,
    attendTo: "where you brake",
    goodWhen: "2 laps driven",
    check: { figure: "driven" },
  },
  {
    id: id(2),
    rule: "drill",
    purpose: "Stops at the mark, corner 5",
    kind: "drill",
    effort: "learning",
    laps: 2,
    corner: 5,
    drill: "braking",
    attendTo: "brake earlier for corner 5",
    goodWhen: "8 of 10 stops at the mark",
    check: { figure: "drill", value: 800 },
  },
  {
    id: id(3),
    rule: "measure",
    purpose: "See what it brought",
    kind: "pace",
    effort: "full",
    laps: 5,
    goodWhen: "usual lap 1:24.50 or under",
    check: { figure: "usual", value: 84_500 },
  },
] as const satisfies readonly PlannedRun[];

/** An open session of "Varnholt Ring · Club hatch" with these lines and its first run. */
export async function aPlannedEvening(
  book: Logbook,
  plan: readonly PlannedRun[] = aPlan,
): Promise<{ readonly comboId: string; readonly sessionId: string; readonly runId: string }> {
  const comboId = await aCombo(book);
  const started = await startSession(book, { comboId, date: "2026-11-25", zone: "Europe/Berlin", plan });
  return { comboId, sessionId: started.sessionId, runId: started.runId };
}
