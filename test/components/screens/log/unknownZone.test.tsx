import { screen, within } from "@testing-library/react";
import { expect, it } from "vitest";
import { addLap, dump, type Logbook, startSession } from "#db";
import { lapsTable, sessionsTable } from "#files";
import { sessionCounts } from "../../../../src/screens/data/sessionCounts.ts";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook } from "../../../support/aLogbook.ts";
import { aCombo, renderLog } from "../../../support/logPage.tsx";

/** A session in a time zone this browser does not know, as an older browser may be given one. */
async function elsewhere(book: Logbook) {
  const comboId = await aCombo(book);
  const { runId, sessionId } = await startSession(book, {
    comboId,
    date: "2026-11-25",
    zone: "Foo/Bar",
    startedAt: Date.UTC(2026, 10, 25, 9, 30),
  });
  await addLap(book, { runId, id: book.newId(), lap: aLap(84_700) });
  return sessionId;
}
const notKnown = "UTC (this browser does not know the time zone Foo/Bar)";

it("shows the session with its clock in UTC, and says so", async () => {
  await renderLog(elsewhere);
  expect(await screen.findByText(`Wednesday 25 November, 09:30 ${notKnown}`)).toBeVisible();
  expect(screen.getAllByText("1:24.700")).not.toHaveLength(0);
});

it("asks after three idle hours by the same clock", async () => {
  const { clock, reload } = await renderLog(elsewhere);
  clock.pass(4 * 3_600_000);
  reload();
  expect(await screen.findByText(/Nothing was logged in this session since/)).toHaveTextContent(
    `since Wednesday 25 November, 18:00 ${notKnown}. Is it over?`,
  );
});

it("moves to another date with its time of day", async () => {
  const { user } = await renderLog(elsewhere);
  await user.click(await screen.findByRole("button", { name: "Session" }));
  const dialog = within(await screen.findByRole("dialog", { name: "This session" }));
  await user.clear(dialog.getByLabelText("Date"));
  await user.type(dialog.getByLabelText("Date"), "2026-11-20");
  await user.click(dialog.getByRole("button", { name: "Done" }));
  expect(await screen.findByText(`Friday 20 November, 09:30 ${notKnown}`)).toBeVisible();
});

it("stands in tables with the clock and the zone of UTC", async () => {
  const { book } = await aLogbook(Date.UTC(2026, 10, 25, 18));
  await elsewhere(book);
  const rows = await dump(book);
  for (const table of [lapsTable(rows), sessionsTable(rows, sessionCounts)])
    expect(table[1]?.slice(0, 3)).toEqual([{ figures: "2026-11-25" }, { figures: "09:30" }, "UTC"]);
});
