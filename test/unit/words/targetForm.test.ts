import { expect, test } from "vitest";
import { sayHowToType, valueLabel } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const now = (value: number) => ({ value, decimals: 3 });

test("the figure now, and how to type what is wanted", () => {
  const said = [
    sayHowToType({ kind: "best" }, now(83_704), "1:23.500"),
    sayHowToType({ kind: "median" }, { value: 84_320, decimals: 2, isLevel: true }, "1:24.000"),
    sayHowToType({ kind: "meanOf", laps: 5 }, now(84_012.4), "1:24.000"),
    sayHowToType({ kind: "scatter" }, now(310), ""),
    sayHowToType({ kind: "cleanShare" }, now(812), ""),
  ];
  expect(said).toEqual([
    "Best so far 1:23.704. Type it like 1:23.500, or its last digits",
    "Level 1:24.32 now. Type it like 1:24.000, or its last digits",
    "Best mean of 5 laps so far 1:24.012. Type it like 1:24.000, or its last digits",
    "Scatter of your last session ± 0.31 s. Type seconds, like 0.25",
    "Share of clean laps of your last session 81.2 %. Type percent, like 85",
  ]);
  said.forEach(expectWellFormed);
});

test("only how to type it where there is no figure yet", () => {
  expect(sayHowToType({ kind: "best" }, undefined, "")).toBe("Type it as 1:23.456");
  expect(sayHowToType({ kind: "scatter" }, undefined, "")).toBe("Type seconds, like 0.25");
  expect(sayHowToType({ kind: "cleanShare" }, undefined, "")).toBe("Type percent, like 85");
});

test("the field is named after what is wanted", () =>
  expect((["best", "median", "meanOf", "scatter", "cleanShare"] as const).map(valueLabel)).toEqual([
    "Time to reach",
    "Time to reach",
    "Time to reach",
    "Scatter to reach",
    "Share to reach",
  ]));
