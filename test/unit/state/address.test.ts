import fc from "fast-check";
import { expect, test } from "vitest";
import { weekName } from "#domain";
import { type Address, parseAddress, printAddress } from "#state/address.ts";

const id = fc.uuid({ version: 7 });
const date = fc
  .date({ min: new Date("2000-01-01"), max: new Date("2100-01-01"), noInvalidDate: true })
  .map((day) => day.toISOString().slice(0, 10));
const period = fc.oneof(
  fc.constantFrom("4w" as const, "12w" as const, "year" as const, "all" as const).map((kind) => ({ kind })),
  fc.tuple(date, date).map(([a, b]) => ({ kind: "dates" as const, from: a < b ? a : b, to: a < b ? b : a })),
);
const withId = <P extends string, K extends string>(place: P, key: K) =>
  fc.option(id).map((value) => ({ place, ...(value !== null && { [key]: value }) }));
const address = fc.oneof(
  withId("log", "sessionId"),
  fc.record({ place: fc.constant("log"), sessionId: id, lapId: id }),
  fc.constant({ place: "review", part: "across" }),
  fc.record({
    place: fc.constant("review"),
    part: fc.constant("compare"),
    kind: fc.constantFrom("run", "session"),
    ids: fc.tuple(id, id),
  }),
  fc
    .constantFrom("", "words=late+braking&remark=off", "from=2026-01-01&shortest=80000")
    .map((asked) => ({ place: "review", part: "search", asked })),
  fc
    .option(date.map(weekName))
    .map((week) => ({ place: "review", part: "statement", ...(week !== null && { week }) })),
  fc.tuple(withId("review", "comboId"), period).map(([base, chosen]) => ({ ...base, period: chosen })),
  withId("targets", "comboId"),
  fc
    .tuple(withId("targets", "comboId"), fc.constantFrom("plan", "race", "record"))
    .map(([base, part]) => ({ ...base, part })),
  withId("rig", "rigId"),
  fc
    .record(
      { field: fc.constantFrom("wheel.gainPercent", "view.degrees"), sessionId: id },
      { requiredKeys: [] },
    )
    .map((change) => ({ place: "rig", change })),
  withId("rig", "testId"),
  fc.constantFrom("screen", "wheel", "plan", "record").map((part) => ({ place: "rig", part })),
  withId("corners", "comboId"),
  fc.record({ place: fc.constant("corners"), comboId: id, corner: fc.integer({ min: 1, max: 999 }) }),
  fc.record({ place: fc.constant("corners"), comboId: id, part: fc.constant("layout") }),
  fc.record(
    { place: fc.constant("corners"), comboId: id, part: fc.constant("review"), reviewId: id },
    { requiredKeys: ["place", "comboId", "part"] },
  ),
  withId("data", "sendId"),
  fc.constantFrom("aside", "backup", "preferences", "restore").map((part) => ({ place: "data", part })),
) as fc.Arbitrary<Address>;

test("an address printed and read again is the same address", () => {
  fc.assert(
    fc.property(address, (one) => {
      expect(parseAddress(printAddress(one))).toEqual(one);
    }),
  );
});

const combo = "01a1eb01-9029-7709-a0ae-48d65f9b10b0";

test("an address nobody understands leads to Log, and never throws", () => {
  expect(parseAddress("")).toEqual({ place: "log" });
  expect(parseAddress("#/nowhere/at-all?x=1")).toEqual({ place: "log" });
  expect(parseAddress("#/log/")).toEqual({ place: "log" });
  expect(parseAddress("#/data?part=nowhere")).toEqual({ place: "data" });
  expect(parseAddress("#/log/0192-cut-short")).toEqual({ place: "log", sessionId: "0192-cut-short" });
  expect(parseAddress("#/rig?field=<script>&session=x")).toEqual({ place: "rig", change: {} });
  for (const query of ["part=nowhere", "test=cut-short"])
    expect(parseAddress(`#/rig?${query}`), query).toEqual({ place: "rig" });
  expect(parseAddress("#/review/not-an-id?period=9w")).toEqual({ place: "review", period: { kind: "12w" } });
  expect(parseAddress("#/corners?corner=5")).toEqual({ place: "corners" });
  expect(parseAddress("#/corners/not-an-id?part=layout")).toEqual({ place: "corners" });
  for (const query of ["corner=0", "corner=05", "corner=1000", "corner=five", "part=map", "of=x"])
    expect(parseAddress(`#/corners/${combo}?${query}`), query).toEqual({ place: "corners", comboId: combo });
  expect(parseAddress(`#/corners/${combo}?part=review&of=cut-short`)).toEqual({
    place: "corners",
    comboId: combo,
    part: "review",
  });
  expect(parseAddress(`#/corners/${combo}?part=layout&of=${combo}&corner=5`)).toEqual({
    place: "corners",
    comboId: combo,
    part: "layout",
  });
  expect(parseAddress("#/review/compare?runs=cut,short")).toEqual({
    place: "review",
    part: "compare",
    kind: "run",
  });
  expect(parseAddress("#/review/statement?week=2025-W53")).toEqual({ place: "review", part: "statement" });
  expect(parseAddress("#/log?lap=01a1eb01-9029-7709-a0ae-48d65f9b10b0")).toEqual({ place: "log" });
  expect(parseAddress("#/review?from=2026-10-01&to=2026-09-01")).toEqual({
    place: "review",
    period: { kind: "12w" },
  });
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (text) => {
      expect(parseAddress(text).place).toBeTruthy();
    }),
  );
});

test("Review opens on its usual period where the address names a day that does not exist", () => {
  const usual = { place: "review", period: { kind: "12w" } };
  expect(parseAddress("#/review?from=2026-02-30&to=2026-03-10")).toEqual(usual);
  expect(parseAddress("#/review?from=2026-01-01&to=2026-02-30")).toEqual(usual);
  expect(parseAddress("#/review?from=2026-13-45&to=2026-14-01")).toEqual(usual);
  expect(parseAddress("#/review?from=0001-01-01&to=2026-02-03")).toEqual(usual);
  expect(parseAddress("#/review?from=2026-02-28&to=2026-03-10")).toEqual({
    place: "review",
    period: { kind: "dates", from: "2026-02-28", to: "2026-03-10" },
  });
});
