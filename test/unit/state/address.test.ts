import fc from "fast-check";
import { expect, test } from "vitest";
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
  fc.tuple(withId("review", "comboId"), period).map(([base, chosen]) => ({ ...base, period: chosen })),
  withId("targets", "comboId"),
  withId("rig", "rigId"),
  withId("corners", "comboId"),
  fc.constant({ place: "data" }),
) as fc.Arbitrary<Address>;

test("an address printed and read again is the same address", () => {
  fc.assert(
    fc.property(address, (one) => {
      expect(parseAddress(printAddress(one))).toEqual(one);
    }),
  );
});

test("an address nobody understands leads to Log, and never throws", () => {
  expect(parseAddress("")).toEqual({ place: "log" });
  expect(parseAddress("#/nowhere/at-all?x=1")).toEqual({ place: "log" });
  expect(parseAddress("#/review/not-an-id?period=9w")).toEqual({ place: "review", period: { kind: "12w" } });
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
