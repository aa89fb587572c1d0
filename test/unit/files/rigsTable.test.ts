import { expect, test } from "vitest";
import type { AllRows, RigSettings } from "#domain";
import { rigsTable } from "#files";
import { wholeRows } from "../../support/wholeRows.ts";

const { deletedAt: _, ...rigs } = (wholeRows as unknown as { readonly rigs: RigSettings }).rigs;
const tableOf = (...some: RigSettings[]) => rigsTable({ rigs: some } as unknown as AllRows);

test("every value of a record has its column, in the unit it is stored in", () => {
  const [heads = [], row = []] = tableOf(rigs);
  const parts = [rigs.screen, rigs.view, rigs.wheel, rigs.pedals, rigs.seat];
  const values = parts.flatMap((part) => Object.values(part as Record<string, string | number>));
  expect(values.length).toBeGreaterThan(25);
  for (const value of values) expect(row).toContain(value);
  const cell = (head: string) => row[heads.indexOf(head)];
  expect(cell("load cell range kg")).toBe(90);
  expect(cell("brake dead zone percent")).toBe(2);
  expect(cell("throttle dead zone percent")).toBe(1);
  expect(cell("brake curve")).toBe("straight");
  expect(cell("seat height m")).toBe(rigs.seat.height);
  expect(cell("eye height m")).toBe(rigs.seat.eyeHeight);
});

test("records stand oldest first, deleted ones nowhere, and what is not known is empty", () => {
  const bare = {
    from: "2026-01-02",
    name: "bare",
    screen: {},
    view: {},
    wheel: {},
    pedals: {},
    seat: {},
    note: "",
  };
  const one = { ...rigs, ...bare, id: "b" };
  const [, first = [], ...others] = tableOf({ ...rigs, from: "2026-03-01" }, one, {
    ...one,
    id: "c",
    deletedAt: 5,
  });
  expect(others).toHaveLength(1);
  expect(first.slice(1, -1)).toEqual(["bare", ...Array(first.length - 3).fill("")]);
});
