import { screen, waitFor } from "@testing-library/react";
import { expect, it } from "vitest";
import { addCombo, addLap, believedUpTo, dump, type Logbook, rowsAhead, setTarget, startSession } from "#db";
import { openAtStart, useLogbook } from "#live";
import { useDevice } from "#state/device.ts";
import { useChores } from "../../../../src/app/useChores.ts";
import { DataScreen } from "../../../../src/screens/data/DataScreen.tsx";
import { aLap } from "../../../support/aLap.ts";
import { renderAt } from "../../../support/renderAt.tsx";
import { pass } from "../../../support/waits.ts";

const then = Date.UTC(2036, 2, 4, 18);
const now = Date.UTC(2026, 11, 1, 18);
const words = /dated as late as Tue 4 Mar 2036, because a clock stood ahead/;

async function anEvening(book: Logbook) {
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  const { runId } = await startSession(book, { comboId, date: "2036-03-04", zone: "Europe/Berlin" });
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_456) });
  await setTarget(book, { comboId, kind: "best", value: 83_000, setOn: "2036-03-04" });
}

async function stored(surroundings: Awaited<ReturnType<typeof renderAt>>["surroundings"]) {
  const { book, shelf } = await openAtStart(surroundings, useDevice.getState());
  const rows = await dump(book);
  book.close();
  shelf.close();
  return rows;
}

it("offers on Data to put dates right that lie after today, and then no longer", async () => {
  const { user, clock, reload, surroundings } = await renderAt("#/data", <DataScreen />, anEvening, then);
  await screen.findByRole("heading", { name: "Storage" });
  expect(screen.queryByText(words)).toBeNull();
  clock.set(now);
  reload();
  expect(await screen.findByText(words)).toBeVisible();
  await user.click(screen.getByRole("button", { name: "Today is Tue 1 Dec 2026" }));
  expect(await screen.findAllByText(/entries are dated right now\./)).not.toHaveLength(0);
  await waitFor(() => expect(screen.queryByText(words)).toBeNull());
  const rows = await stored(surroundings);
  expect(rowsAhead(rows, believedUpTo(now))).toBeUndefined();
  // A target counts from today on; in 2036 no lap driven before would ever reach it.
  expect(rows.targets).toMatchObject([{ value: 83_000, setAt: now, setOn: "2026-12-01" }]);
});

function Chores() {
  useChores();
  return <p>{useLogbook().entry.title}</p>;
}

it("tells once, after opening, of entries dated after today, and puts them right where the driver says so", async () => {
  const { user, clock, reload, surroundings } = await renderAt("#/log", <Chores />, anEvening, then);
  await screen.findByText("My logbook");
  clock.set(now);
  reload();
  expect(await screen.findAllByText(words)).not.toHaveLength(0);
  reload();
  await screen.findByText("My logbook");
  await user.click(screen.getByRole("button", { name: "Today is Tue 1 Dec 2026" }));
  expect(await screen.findAllByText(/entries are dated right now\./)).not.toHaveLength(0);
  await waitFor(() => expect(screen.queryAllByText(words)).toHaveLength(0));
  expect(rowsAhead(await stored(surroundings), believedUpTo(now))).toBeUndefined();
});

function LeftAtOnce() {
  const { book } = useLogbook();
  useChores();
  return (
    <button type="button" onClick={() => book.close()}>
      Leave
    </button>
  );
}

it("says nothing of chores that a logbook was left before", async () => {
  const { user } = await renderAt("#/log", <LeftAtOnce />, anEvening, then);
  await user.click(await screen.findByRole("button", { name: "Leave" }));
  // The chores begin a second and a half after opening.
  await pass(2500);
  expect(screen.queryAllByText(/were not (looked at|renewed)/)).toEqual([]);
});
