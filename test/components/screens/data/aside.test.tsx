import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it, vi } from "vitest";
import { addReference, checkRows, dump, type Logbook, openLogbook, withAside } from "#db";
import { useDevice } from "#state/device.ts";
import { AsideNotice } from "../../../../src/app/AsideNotice.tsx";
import { useSetAside } from "../../../../src/app/useSetAside.ts";
import { DataScreen } from "../../../../src/screens/data/DataScreen.tsx";
import { putRaw } from "../../../support/damage.ts";
import { aCombo, openWith } from "../../../support/logPage.tsx";
import { pick } from "../../../support/pick.ts";
import { renderAt } from "../../../support/renderAt.tsx";

function Page() {
  useSetAside();
  return (
    <>
      <AsideNotice />
      <DataScreen />
    </>
  );
}

/** The page over a logbook with an open session of two laps and a reference lap, and damage done to it. */
async function renderDamaged(damage: (book: Logbook) => Promise<void>) {
  return renderAt("#/data", <Page />, async (book) => {
    const comboId = await aCombo(book);
    await openWith(book, [85_118, 85_300], comboId);
    await addReference(book, { comboId, ms: 84_000, decimals: 3, source: "a friend" });
    await damage(book);
    // Whatever reads the row finds it; here the search for what is the same twice, and the list of all laps.
    for (const table of Object.values(book.tables)) await table.toArray();
    const { setAside } = await import("#db");
    await setAside(book, book.unreadable.get());
  });
}
const part = async () => within(await screen.findByRole("region", { name: "Rows set aside" }));
const again = async () =>
  openLogbook({ name: useDevice.getState().logbook ?? "", clock: Date.now, newId: () => "" });

async function patch(book: Logbook, table: "cars" | "sessions" | "runs" | "references", change: object) {
  const [row] = await book.tables[table].toArray();
  await putRaw(book.name, table, { ...row, ...change });
}

describe("rows set aside", () => {
  it("are nothing in a sound logbook", async () => {
    await renderDamaged(async () => undefined);
    await screen.findByRole("region", { name: "Backup" });
    expect(screen.queryByRole("region", { name: "Rows set aside" })).toBeNull();
    expect(screen.queryByText(/set aside/)).toBeNull();
  });

  it("are named with the wrong field and what it holds, and stand in the logbook again once it is corrected", async () => {
    const { user } = await renderDamaged((book) => patch(book, "sessions", { date: "0000-00-00" }));
    const { findByText, findByRole } = await part();
    // Said once: what stands above every other page leads here.
    expect(screen.getAllByText(/One row of this logbook is set aside/)).toHaveLength(1);
    expect(screen.queryByRole("link", { name: "Mend or delete it, on Data" })).toBeNull();
    expect(await findByText(/^date: .* Stored: 0000-00-00$/)).toBeVisible();
    const field = await findByRole("textbox", { name: "What date should be" });
    await user.clear(field);
    await user.type(field, "31 February");
    await user.click(await findByRole("button", { name: "Put back" }));
    expect(await findByText(/“31 February” is not right/)).toBeVisible();
    await user.clear(field);
    await user.type(field, "2026-11-25");
    await user.click(await findByRole("button", { name: "Put back" }));
    await waitFor(() => expect(screen.queryByRole("region", { name: "Rows set aside" })).toBeNull());
    expect(screen.queryByText(/One row of this logbook is set aside/)).toBeNull();
    const book = await again();
    expect(await book.tables.sessions.toArray()).toMatchObject([{ date: "2026-11-25" }]);
    expect(await book.digests.count()).toBe(1);
    book.close();
  });

  it("say in plain words what is wrong, and do not take what is missing for a text", async () => {
    const { user } = await renderDamaged(async (book) => {
      await patch(book, "cars", { name: null });
      await patch(book, "references", { ms: 84_000.5 });
    });
    const { findByText, findByRole, findAllByRole } = await part();
    expect(await findByText("name: not a text. Stored: nothing")).toBeVisible();
    expect(await findByText("ms: not a whole number. Stored: 84000.5")).toBeVisible();
    const name = await findByRole("textbox", { name: "What name should be" });
    expect(name).toHaveValue("");
    await user.type(name, "club hatch");
    for (const button of await findAllByRole("button", { name: "Put back" }))
      if (button.closest("li")?.contains(name)) await user.click(button);
    // What was wrong is gone from its line before the row is in the book; its line goes when it is.
    await waitFor(() => expect(screen.getAllByRole("button", { name: "Put back" })).toHaveLength(1));
    const book = await again();
    expect(await book.tables.cars.toArray()).toMatchObject([{ name: "club hatch" }]);
    book.close();
  });

  it("can lose an optional field, and a lap goes back among the others of its run", async () => {
    const { user } = await renderDamaged(async (book) => {
      const [run] = await book.tables.runs.toArray();
      const laps = run?.laps.map((lap, index) => (index === 1 ? { ...lap, note: 42 } : lap));
      await patch(book, "runs", { laps });
    });
    const { findByRole, findByText } = await part();
    expect(await findByText("lap 1:25.300")).toBeVisible();
    await user.click(await findByRole("button", { name: "Put back without note" }));
    await waitFor(() => expect(screen.queryByRole("region", { name: "Rows set aside" })).toBeNull());
    const book = await again();
    expect((await book.tables.runs.toArray())[0]?.laps.map(({ ms, note }) => [ms, note])).toEqual([
      [85_118, undefined],
      [85_300, undefined],
    ]);
    book.close();
  });

  it("take a time as it is written, and go on to the next field that is wrong", async () => {
    const { user } = await renderDamaged((book) => patch(book, "references", { ms: "fast", source: 7 }));
    const { findByRole } = await part();
    const field = await findByRole("textbox", { name: "What ms should be" });
    await user.clear(field);
    await user.type(field, "1:24.000");
    await user.click(await findByRole("button", { name: "Put back" }));
    await findByRole("textbox", { name: "What source should be" });
    await user.click(await findByRole("button", { name: "Put back" }));
    await waitFor(() => expect(screen.queryByRole("region", { name: "Rows set aside" })).toBeNull());
    const book = await again();
    expect(await book.tables.references.toArray()).toMatchObject([{ ms: 84_000, source: "7" }]);
    book.close();
  });

  it("are told what they belong to by name, and bring back what hangs on them", async () => {
    const { user } = await renderAt("#/data", <Page />, async (book) => {
      await openWith(book, [85_118, 85_300]);
      const rows = await dump(book);
      const file = { ...rows, combos: rows.combos.map((row) => ({ ...row, carId: row.layoutId })) };
      const { aside = [] } = withAside(file, checkRows(file)).rows;
      for (const table of ["combos", "sessions", "runs"] as const)
        for (const { id } of rows[table]) await book.database.table(table).delete(id);
      await book.database.table("aside").bulkPut([...aside]);
    });
    const { findByText, findByRole, getAllByText, getAllByRole } = await part();
    expect(await findByText("its car is a row of another table")).toBeVisible();
    expect(
      await findByText("Its combo is set aside too. Put that back first, and this comes back with it."),
    ).toBeVisible();
    await waitFor(() => expect(getAllByText(/is set aside too/)).toHaveLength(2));
    expect(getAllByRole("button", { name: "Put back" })).toHaveLength(1);
    await user.click(await findByRole("button", { name: "Put back" }));
    expect(await findByText(/No car is chosen/)).toBeVisible();
    const car = await findByRole("combobox", { name: "Its car" });
    pick(car, "Club hatch");
    await user.click(await findByRole("button", { name: "Put back" }));
    await waitFor(() => expect(screen.queryByRole("region", { name: "Rows set aside" })).toBeNull());
    const book = await again();
    expect(await book.tables.sessions.count()).toBe(1);
    expect((await book.tables.runs.toArray())[0]?.laps).toHaveLength(2);
    book.close();
  });

  it("are deleted for good only after the word has been typed, and saved as a file", async () => {
    const made = vi.fn((_: Blob) => "blob:x");
    Object.assign(URL, { createObjectURL: made, revokeObjectURL: () => undefined });
    const { user } = await renderDamaged((book) => patch(book, "references", { ms: -1 }));
    const { findByRole } = await part();
    await user.click(await findByRole("button", { name: "Save it as a file" }));
    await waitFor(() => expect(made).toHaveBeenCalledOnce());
    await user.click(await findByRole("button", { name: "Delete for good" }));
    const dialog = within(await screen.findByRole("alertdialog", { name: "Delete for good" }));
    await user.click(dialog.getByRole("button", { name: "Delete for good" }));
    expect(await dialog.findByText(/The row was not deleted/)).toBeVisible();
    await user.type(dialog.getByRole("textbox"), "delete");
    await user.click(dialog.getByRole("button", { name: "Delete for good" }));
    await waitFor(() => expect(screen.queryByRole("region", { name: "Rows set aside" })).toBeNull());
    const book = await again();
    expect(await book.tables.references.count()).toBe(0);
    book.close();
  });
});
