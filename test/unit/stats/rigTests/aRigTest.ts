import type { RigTest, Run, RunOfTest } from "#domain";
import { aRun, type Told } from "../someRows.ts";

/** A rig test with its pairs in the order told: "ABBA…", the setting each begins with. */
export function aRigTest(order: string, fields: Partial<RigTest> = {}): RigTest {
  return {
    id: "test",
    createdAt: 0,
    updatedAt: 0,
    comboId: "combo",
    question: "less gain",
    sayA: "gain 72 %",
    sayB: "gain 54 %",
    pairsPlanned: order.length,
    level: 0.1,
    seed: 3,
    pairs: [...order].map((first) => ({ first: first as "A" | "B" })),
    ...fields,
  };
}

/** Clean laps of 84 s, or of the time told. */
export function cleanLaps(laps: number, ms = 84_000): number[] {
  return Array.from({ length: laps }, (_, lap) => ms + (lap % 2));
}

/** The n-th run of an evening, of the test, with its place as told: "1A", or "1A void" for one that does not count. */
export function aTestRun(
  evening: number,
  n: number,
  told: string,
  laps: readonly Told[] = cleanLaps(5),
  fields: Partial<Run> = {},
): Run {
  const [place = "", why] = told.split(" ");
  const rigTest: RunOfTest = {
    id: "test",
    pair: Number(place.slice(0, -1)),
    side: place.at(-1) as "A" | "B",
    ...(why !== undefined && { void: why }),
  };
  const startedAt = evening * 86_400_000 + n * 600_000;
  const made = { startedAt, endedAt: startedAt + 1, sessionId: `evening ${evening}`, rigTest };
  return aRun(n, laps, { ...made, id: `${evening}/${n} ${told}`, ...fields });
}
