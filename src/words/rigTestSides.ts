import { type RigSettings, type RigTest, sayDate } from "#domain";

/** What stands as A and as B, in words. */
export interface SaidSides {
  readonly sayA: string;
  readonly sayB: string;
}

/** A rig test, or as much of one as names its settings. */
export type NamedTest = Pick<RigTest, "sayA" | "sayB" | "rigA" | "rigB">;

/**
 * What a test's two settings are called. Old rows do not say it: the names of their records, or the dates from which those
 * hold, stand for them.
 * @param records of the rig; without them, "setting A" and "setting B"
 */
export function saidSides(
  test: NamedTest,
  records: readonly Pick<RigSettings, "id" | "name" | "from">[] = [],
): SaidSides {
  const nameOf = (id: string | undefined) => {
    const record = records.find((one) => one.id === id);
    if (record === undefined) return undefined;
    return record.name === "" ? `the record from ${sayDate(record.from)}` : record.name;
  };
  return {
    sayA: test.sayA ?? nameOf(test.rigA) ?? "setting A",
    sayB: test.sayB ?? nameOf(test.rigB) ?? "setting B",
  };
}

/** The words for one side. */
export function ofSide<T>(side: "A" | "B", a: T, b: T): T {
  return side === "A" ? a : b;
}

/**
 * A setting with its letter, as it is told between two runs.
 * @example saySide({ sayA: "gain 72 %", sayB: "gain 54 %" }, "B") // "B, gain 54 %"
 */
export function saySide({ sayA, sayB }: SaidSides, side: "A" | "B"): string {
  return `${side}, ${ofSide(side, sayA, sayB)}`;
}
