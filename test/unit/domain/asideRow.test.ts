import { expect, it } from "vitest";
import { asideRow, settledAside } from "#domain";

it("the same row set aside twice is one, whatever order its fields came in and whoever found the fault", () => {
  const first = asideRow("sessions", { id: "s", date: "2026-02-30" }, "date: not a day", 5);
  const again = asideRow("sessions", { date: "2026-02-30", id: "s" }, "date: no such day", 6);
  expect(again.id).toBe(first.id);
  expect(first).toMatchObject({ table: "sessions", schema: 5, why: "date: not a day" });
  expect(first.row).toEqual({ id: "s", date: "2026-02-30" });
});

it("rows that differ in a field or stand in another table are two", () => {
  const ids = [
    asideRow("sessions", { id: "s", n: 1 }, "", 5),
    asideRow("sessions", { id: "s", n: 2 }, "", 5),
    asideRow("runs", { id: "s", n: 1 }, "", 5),
  ].map(({ id }) => id);
  expect(new Set(ids).size).toBe(3);
});

// FNV-1a of 32 bits, worked out beside the app for '["t",{}]', from its own offset basis and from that turned about.
it("is known by sixteen hexadecimal digits that stay the same for good", () => {
  expect(asideRow("t", {}, "", 1).id).toMatch(/^[0-9a-f]{16}$/);
  const fnv = (text: string, begin: number) => {
    let sum = BigInt(begin);
    for (const sign of text) sum = ((sum ^ BigInt(sign.charCodeAt(0))) * 16_777_619n) % 2n ** 32n;
    return sum.toString(16).padStart(8, "0");
  };
  for (const table of ["t", "sessions", "laps", "runs", "combos"]) {
    const text = `["${table}",{}]`;
    expect(asideRow(table, {}, "", 1).id).toBe(fnv(text, 0x811c9dc5) + fnv(text, 0x9dc5811c));
  }
});

it("once it is settled it keeps what it was known by and loses what it held", () => {
  const { row: _, ...rest } = asideRow("runs", { id: "r" }, "kind: absent", 5);
  expect(settledAside(asideRow("runs", { id: "r" }, "kind: absent", 5))).toEqual(rest);
});
