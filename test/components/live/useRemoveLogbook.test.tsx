import { act, waitFor } from "@testing-library/react";
import { afterEach, expect, it, vi } from "vitest";
import { createLogbook, LedgerFault, listLogbooks, openLogbook } from "#db";
import { useRemoveLogbook } from "#live";
import { useDevice } from "#state/device.ts";
import { aLappedEvening } from "../../support/aLappedEvening.ts";
import { hooksAt, press, said } from "../../support/hooksAt.tsx";

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

/** A shelf of several logbooks, and the way to remove one. */
async function severalLogbooks(kinds: readonly ("own" | "demo")[]) {
  const page = await hooksAt(aLappedEvening);
  const others = [];
  for (const [n, kind] of kinds.entries())
    others.push(await createLogbook(page.shelf, { title: `Other ${n}`, kind }));
  const { result } = page.draw(() => useRemoveLogbook());
  const names = async () => (await listLogbooks(page.shelf)).map(({ name }) => name).sort();
  const remove: typeof result.current = (...given) => act(() => result.current(...given));
  return { ...page, others, names, remove };
}

it("another logbook than the open one is removed with its rows, and the open one stays", async () => {
  const { remove, others, names, openOther, entry, surroundings } = await severalLogbooks(["own"]);
  const [other] = others;
  if (other === undefined) throw new Error("no other");
  (await openLogbook({ name: other.name, ...surroundings })).close();
  useDevice.getState().change({ markers: { [other.name]: { sessions: 1 }, [entry.name]: { sessions: 2 } } });
  await remove(other);
  expect(await names()).toEqual([entry.name]);
  expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain(other.name);
  expect(useDevice.getState().markers).toEqual({ [entry.name]: { sessions: 2 } });
  expect(openOther).not.toHaveBeenCalled();
  expect(said()).toEqual([{ kind: "done", text: "“Other 0” is removed." }]);
});

it("in the place of the open one comes the one wanted, else one of the driver's own, else any, else an empty one", async () => {
  const wanted = await severalLogbooks(["own", "own"]);
  await wanted.remove(wanted.entry, { next: wanted.others[0]?.name ?? "", before: "All is moved. " });
  expect(wanted.openOther.mock.calls).toEqual([[wanted.others[0]?.name]]);
  expect(said()).toEqual([{ kind: "done", text: "All is moved. “My logbook” is removed." }]);
  const own = await severalLogbooks(["own", "demo"]);
  await own.remove(own.entry);
  expect(own.openOther.mock.calls).toEqual([[own.others[0]?.name]]);
  const demo = await severalLogbooks(["demo"]);
  await demo.remove(demo.entry);
  expect(demo.openOther.mock.calls).toEqual([[demo.others[0]?.name]]);
  const none = await severalLogbooks([]);
  await none.remove(none.entry);
  const [made] = await listLogbooks(none.shelf);
  expect(made).toMatchObject({ title: "My logbook", kind: "own" });
  expect(made?.name).not.toBe(none.entry.name);
  expect(none.openOther.mock.calls).toEqual([[made?.name]]);
});

it("a logbook that cannot be removed is said, and can be tried again", async () => {
  const { remove, entry, shelf, names, others } = await severalLogbooks(["own"]);
  const listing = vi
    .spyOn(shelf.logbooks, "toArray")
    .mockRejectedValue(new LedgerFault("failed", "Not read."));
  const ordered = vi.spyOn(shelf.logbooks, "orderBy").mockImplementation(() => {
    throw new LedgerFault("failed", "Not read.");
  });
  await remove(entry);
  listing.mockRestore();
  ordered.mockRestore();
  expect(said()).toMatchObject([{ kind: "fault", text: expect.stringContaining("Not read.") }]);
  expect(await names()).toEqual([entry.name, others[0]?.name].sort());
  await act(async () => press("Try again"));
  await waitFor(async () => expect(await names()).toEqual([others[0]?.name]));
});
