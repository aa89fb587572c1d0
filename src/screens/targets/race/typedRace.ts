import type { FieldProblem, FormReading } from "#domain";
import { type Measure, readMeasure, readTime } from "#entry";

/** A race as it is being typed. */
export interface TypedRace {
  readonly length: "laps" | "minutes";
  readonly amount: string;
  readonly toBeat: string;
  readonly perLap: string;
  readonly reserve: string;
}

/** Nothing typed: a distance that shows what the page does. */
export const emptyRace: TypedRace = { length: "laps", amount: "20", toBeat: "", perLap: "", reserve: "" };

/** A race as it is asked about; what is missing or cannot be read is absent. */
export interface ReadRace {
  readonly count?: number;
  readonly minutes?: number;
  readonly rivalMeanMs?: number;
  readonly perLap?: number;
  readonly reserve?: number;
}

export type RaceField = "amount" | "toBeat" | "perLap" | "reserve";

/** Common practice, no source: the longest races of the trade take a day. */
const measures = {
  laps: { name: "Laps", unit: "", least: 1, most: 999, isWhole: true },
  minutes: { name: "Minutes", unit: "min", least: 1, most: 1440 },
  perLap: { name: "Fuel a lap", unit: "l", least: 0, most: 100 },
  reserve: { name: "Reserve", unit: "l", least: 0, most: 1000 },
} as const satisfies Readonly<Record<string, Measure>>;

/** Reads what was typed, each field for itself: what can be read is answered whatever else is wrong. */
export function readRace(
  { length, amount, toBeat, perLap, reserve }: TypedRace,
  nearMs: number | undefined,
): FormReading<ReadRace, RaceField> & { readonly race: ReadRace } {
  const read = {
    amount: readMeasure(amount, measures[length]),
    perLap: readMeasure(perLap, measures.perLap),
    reserve: readMeasure(reserve, measures.reserve),
  };
  const time =
    toBeat.trim() === "" ? undefined : readTime(toBeat, { ...(nearMs !== undefined && { nearMs }) });
  const problems: Partial<Record<RaceField, FieldProblem>> = {
    ...(!read.amount.ok && { amount: read.amount.problem }),
    ...(!read.perLap.ok && { perLap: read.perLap.problem }),
    ...(!read.reserve.ok && { reserve: read.reserve.problem }),
    ...(time !== undefined && !time.ok && { toBeat: time.problem }),
  };
  const valueIn = (one: (typeof read)[keyof typeof read]) => (one.ok ? one.value : undefined);
  const [distance, use, kept] = [valueIn(read.amount), valueIn(read.perLap), valueIn(read.reserve)];
  const race: ReadRace = {
    ...(distance !== undefined && (length === "laps" ? { count: distance } : { minutes: distance })),
    ...(time?.ok && { rivalMeanMs: time.ms }),
    ...(use !== undefined && { perLap: use }),
    ...(kept !== undefined && { reserve: kept }),
  };
  return Object.keys(problems).length === 0 ? { ok: true, value: race, race } : { ok: false, problems, race };
}

/** What was typed, as the driver would know it again. */
export function raceInWords({ length, amount, toBeat, perLap, reserve }: TypedRace): string {
  return [
    amount && `${amount} ${length}`,
    toBeat && `to beat ${toBeat}`,
    perLap && `${perLap} l a lap`,
    reserve && `reserve ${reserve} l`,
  ]
    .filter(Boolean)
    .join(" · ");
}
