import { describe, expect, it } from "vitest";
import {
  readTarget,
  type TypedTarget,
  typedLaps,
  writeTarget,
} from "../../../../src/screens/targets/typedTarget.ts";

const typed = (fields: Partial<TypedTarget>): TypedTarget => ({
  ...{ comboId: "c", kind: "best", laps: "5", value: "1:23.4", by: "2026-12-13" },
  ...{ process: "", why: "", note: "" },
  ...fields,
});
const read = (fields: Partial<TypedTarget>) =>
  readTarget(typed(fields), { nearMs: undefined, displayDecimals: 3 });

describe("a target as it is typed", () => {
  it("of each kind, in the unit of its figure", () => {
    const values = [
      read({}),
      read({ kind: "median", value: "83.4" }),
      read({ kind: "meanOf", laps: "10" }),
      read({ kind: "scatter", value: "0,25" }),
      read({ kind: "scatter", value: "0.3 s" }),
      read({ kind: "cleanShare", value: "85" }),
      read({ kind: "cleanShare", value: "87.5 %" }),
    ].map((one) => one.ok && [one.value.kind, one.value.laps, one.value.value]);
    expect(values).toEqual([
      ["best", undefined, 83_400],
      ["median", undefined, 83_400],
      ["meanOf", 10, 83_400],
      ["scatter", undefined, 250],
      ["scatter", undefined, 300],
      ["cleanShare", undefined, 850],
      ["cleanShare", undefined, 875],
    ]);
  });

  it("keeps what was written about it, and nothing where nothing was", () => {
    expect(read({ process: " brake later ", why: "the club race", note: " " })).toMatchObject({
      value: { process: "brake later", why: "the club race", note: undefined },
    });
  });

  it.each([
    [{ kind: "meanOf", laps: "" }, "laps"],
    [{ kind: "meanOf", laps: "1" }, "laps"],
    [{ kind: "meanOf", laps: "2.5" }, "laps"],
    [{ kind: "scatter", value: "" }, "value"],
    [{ kind: "scatter", value: "1:23.4" }, "value"],
    [{ kind: "cleanShare", value: "101" }, "value"],
    [{ kind: "best", value: "950" }, "value"],
    [{ by: "" }, "by"],
  ] as const)("says in which field something is wrong: %o", (fields, at) => {
    const reading = read(fields);
    expect(reading.ok ? [] : Object.keys(reading.problems)).toEqual([at]);
  });

  it("asks for no number of laps where none is wanted", () => {
    expect(read({ laps: "many" }).ok).toBe(true);
    expect(typedLaps(typed({ laps: "3" }))).toBeUndefined();
    expect(typedLaps(typed({ kind: "meanOf", laps: "3" }))).toBe(3);
    expect(typedLaps(typed({ kind: "meanOf", laps: "x" }))).toBeUndefined();
  });

  it("is written into its field so that it is read back", () => {
    expect([
      writeTarget("best", 83_400),
      writeTarget("meanOf", 84_000),
      writeTarget("scatter", 250),
      writeTarget("cleanShare", 875),
    ]).toEqual(["1:23.400", "1:24.000", "0.25", "87.5"]);
  });
});
