import { screen, waitFor, within } from "@testing-library/react";
import { expect, it } from "vitest";
import { addCombo, addLap, dump, type Logbook, newestSchema, startSession } from "#db";
import type { AllRows, Lap } from "#domain";
import { writeBackup } from "#files";
import { openAtStart } from "#live";
import { useDevice } from "#state/device.ts";
import { useUndo } from "#state/undo.ts";
import { DataScreen } from "../../../../src/screens/data/DataScreen.tsx";
import { aLap } from "../../../support/aLap.ts";
import { renderAt } from "../../../support/renderAt.tsx";

let rows: AllRows;
async function anEvening(book: Logbook) {
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  const { runId } = await startSession(book, { comboId, date: "2026-11-25", zone: "Europe/Berlin" });
  for (const ms of [83_456, 83_912, 84_100]) await addLap(book, { runId, id: book.newId(), lap: aLap(ms) });
  rows = await dump(book);
}

/** The evening as another device has it: each lap of the run as the function makes it. */
async function fileOf(change: (lap: Lap, index: number) => Lap): Promise<File> {
  const runs = rows.runs.map((run) => ({ ...run, laps: run.laps.map(change) }));
  const head = { title: "Evenings", schema: newestSchema, sha256: undefined };
  return new File([await writeBackup({ ...rows, runs }, head)], "phone.json");
}

async function lookAt(user: Awaited<ReturnType<typeof renderAt>>["user"], file: File) {
  await user.click(await screen.findByRole("button", { name: "Choose a received file" }));
  const field = document.querySelector<HTMLInputElement>('input[type="file"]');
  if (field === null) throw new Error("no file dialog was opened");
  await user.upload(field, file);
}
const line = async (what: string) => {
  const table = await screen.findByRole("table", { name: "What the merge would change" });
  return within(table).getByRole("row", { name: new RegExp(`^${what} `) });
};

it("shows what a merge would change before anything is written, and one undo takes it back", async () => {
  const { user, clock } = await renderAt("#/data", <DataScreen />, anEvening);
  clock.pass(60_000);
  const file = await fileOf((lap, index) => {
    const later = { ...lap, updatedAt: lap.updatedAt + 1000 };
    if (index === 0) return { ...later, ms: 83_400 };
    return index === 1 ? { ...later, deletedAt: later.updatedAt } : lap;
  });
  await lookAt(user, file);
  expect(await line("laps")).toHaveAccessibleName("laps 1 1 1");
  expect(screen.getAllByRole("columnheader").map((head) => head.textContent)).toEqual(
    expect.arrayContaining(["changed", "deleted", "as it was"]),
  );
  await user.click(screen.getByRole("button", { name: "Merge into the open logbook" }));
  expect(await screen.findAllByText(/Merged: backup of .*One row added or changed\./)).not.toHaveLength(0);
  expect(await screen.findByText(/before a merge · 1 session, 3 laps/)).toBeVisible();
  await lookAt(user, file);
  expect(await screen.findByText("Nothing would change:")).toBeVisible();
  await user.click(screen.getByRole("button", { name: "Cancel" }));
  await useUndo.getState().undo();
  expect(await screen.findAllByText(/Undone: Merged: backup of/)).not.toHaveLength(0);
  await lookAt(user, file);
  expect(await line("laps")).toHaveAccessibleName("laps 1 1 1");
});

it("does nothing to the logbook when the driver only looks", async () => {
  const { user, surroundings, clock } = await renderAt("#/data", <DataScreen />, anEvening);
  clock.pass(60_000);
  await lookAt(user, await fileOf((lap) => ({ ...lap, ms: 80_000, updatedAt: lap.updatedAt + 1000 })));
  await line("laps");
  await user.click(screen.getByRole("button", { name: "Cancel" }));
  await waitFor(() => expect(screen.queryByRole("radio", { name: "merge" })).toBeNull());
  const { book, shelf } = await openAtStart(surroundings, useDevice.getState());
  expect(await dump(book)).toEqual(rows);
  book.close();
  shelf.close();
});

it("offers no folder where the browser has none, and says what it does instead", async () => {
  await renderAt("#/data", <DataScreen />);
  expect(await screen.findByText(/lets no page write into a folder by itself/)).toBeVisible();
  expect(screen.queryByRole("button", { name: "Choose a folder" })).toBeNull();
});

it("asks for a text when there is none to look at", async () => {
  const { user } = await renderAt("#/data", <DataScreen />);
  await user.click(await screen.findByRole("button", { name: "Look at the text" }));
  expect(screen.getByRole("textbox", { name: "Text from the other device" })).toHaveAccessibleDescription(
    /There is no text yet/,
  );
});

it("asks for the date before a file is merged that a clock ahead has stamped, and once told, merges", async () => {
  const { user, clock } = await renderAt("#/data", <DataScreen />, anEvening);
  clock.set(Date.UTC(2026, 11, 1, 18));
  const today = "Tue 1 Dec 2026";
  const ahead = Date.UTC(2036, 2, 4, 12);
  await lookAt(
    user,
    await fileOf((lap, index) =>
      index === 0 ? { ...lap, ms: 80_000, had: [lap.updatedAt], updatedAt: ahead } : lap,
    ),
  );
  expect(await screen.findByText(/One entry is dated after today, as late as Tue 4 Mar 2036/)).toBeVisible();
  await user.click(screen.getByRole("button", { name: "Merge into the open logbook" }));
  expect(await screen.findByText(`Not merged: say first whether today is ${today}.`)).toBeVisible();
  await user.click(screen.getByRole("checkbox", { name: `Today is ${today}` }));
  await user.click(screen.getByRole("button", { name: "Merge into the open logbook" }));
  expect(await screen.findAllByText(/Merged: backup of .*One row added or changed\./)).not.toHaveLength(0);
});

it("merges nothing that looks ahead of a clock that shows a day before this version was made", async () => {
  const { user, clock } = await renderAt("#/data", <DataScreen />, anEvening);
  const file = await fileOf((lap, index) => (index === 0 ? { ...lap, ms: 80_000 } : lap));
  clock.set(Date.UTC(2016, 2, 4, 12));
  await lookAt(user, file);
  expect(await screen.findByText(/This device’s clock says Fri 4 Mar 2016, which is before/)).toBeVisible();
  expect(screen.queryByRole("checkbox", { name: /Today is/ })).toBeNull();
  await user.click(screen.getByRole("button", { name: "Merge into the open logbook" }));
  expect(screen.getByRole("button", { name: "Merge into the open logbook" })).toBeVisible();
  expect(screen.queryByText(/Merged: backup/)).toBeNull();
});
