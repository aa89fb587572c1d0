import { expect, it } from "vitest";
import { editLap, LedgerFault } from "#db";
import { putDatesRight, type SendOut } from "#live";
import { aLappedEvening, itsLap } from "../../support/aLappedEvening.ts";
import { hooksAt, said } from "../../support/hooksAt.tsx";

it("entries dated ahead are put right, and how many is said", async () => {
  const page = await hooksAt(aLappedEvening);
  const { book, clock } = page;
  const at = clock.now();
  clock.pass(3 * 86_400_000);
  await editLap(book, { ...(await itsLap(book)), patch: { ms: 83_000 } });
  clock.set(at);
  await putDatesRight(page.page);
  expect(said()).toEqual([{ kind: "done", text: "One entry is dated right now." }]);
  await putDatesRight(page.page);
  expect(said()).toEqual([{ kind: "done", text: "0 entries are dated right now." }]);
  const days: unknown[] = [];
  const sendOut = (async (_: string, errand: string, details: unknown) => {
    days.push([errand, details]);
    return 7;
  }) as unknown as SendOut;
  clock.set(Date.parse("2026-11-25T23:30:00Z"));
  await putDatesRight({ ...page.page, sendOut });
  expect(days).toEqual([["putDatesRight", { today: "2026-11-26" }]]);
  expect(said()).toEqual([{ kind: "done", text: "7 entries are dated right now." }]);
  const fails = (error: unknown) =>
    putDatesRight({ ...page.page, sendOut: (async () => Promise.reject(error)) as unknown as SendOut });
  await fails(new LedgerFault("failed", "Not done."));
  expect(said().at(-1)).toEqual({ kind: "fault", text: "Not done." });
  await expect(fails(new TypeError("a slip"))).rejects.toThrow("a slip");
});
