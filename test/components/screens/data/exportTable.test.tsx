import { screen, within } from "@testing-library/react";
import { beforeEach, expect, it } from "vitest";
import { addCombo, addLap, endSession, type Logbook, setTarget, startSession } from "#db";
import { DataScreen } from "../../../../src/screens/data/DataScreen.tsx";
import { aLap } from "../../../support/aLap.ts";
import { catchDownloads } from "../../../support/downloads.ts";
import { pick } from "../../../support/pick.ts";
import { renderAt } from "../../../support/renderAt.tsx";

async function anEvening(book: Logbook) {
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "=Varnholt" } });
  const { runId, sessionId } = await startSession(book, {
    comboId,
    date: "2026-11-25",
    zone: "Europe/Berlin",
  });
  const note = "wide; =1+1";
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_400, { decimals: 1, note }) });
  await addLap(book, {
    runId,
    id: book.newId(),
    lap: { source: "typed", remarks: [{ kind: "off", corner: 5 }] },
  });
  await endSession(book, { sessionId, note: "" });
  await setTarget(book, { comboId, kind: "best", value: 82_500, setOn: "2026-11-25", by: "2026-12-24" });
}

let saved: ReturnType<typeof catchDownloads>;

beforeEach(() => {
  saved = catchDownloads();
});

const part = () => within(screen.getByRole("region", { name: "Export" }));
async function text() {
  return new TextDecoder("utf-8", { ignoreBOM: true }).decode(await saved.at(-1)?.blob.arrayBuffer());
}

it("saves laps with a decimal comma, separated by semicolons, as the driver chose", async () => {
  const { user } = await renderAt("#/data", <DataScreen />, anEvening);
  await screen.findByRole("region", { name: "Export" });
  pick(part().getByRole("combobox", { name: "Decimal sign" }), "comma");
  expect(part().getByRole("combobox", { name: "Between the cells" })).toHaveDisplayValue("semicolon");
  await user.click(part().getByRole("button", { name: "Save as CSV" }));
  await screen.findAllByText(/^2 rows handed to this browser’s downloads as My-logbook-laps-2026-11-25\.csv/);
  expect(saved[0]?.name).toBe("My-logbook-laps-2026-11-25.csv");
  const lines = (await text()).split("\r\n");
  expect(
    lines[0]?.startsWith(
      "\uFEFFdate;time of day;time zone;car;track;layout;session;run;lap;lap time;seconds counted;",
    ),
  ).toBe(true);
  expect(lines[1]).toContain(
    '2026-11-25;19:00;Europe/Berlin;Club hatch;\'=Varnholt;;1;1;1;1:23,4;83,4;;"wide; =1+1";typed;',
  );
  expect(lines[2]).toContain(";1;1;2;no time;;off@5;;typed;");
  expect(lines).toHaveLength(4);
});

it("saves sessions, targets and rig records, and leaves the byte order mark out by choice", async () => {
  const { user } = await renderAt("#/data", <DataScreen />, anEvening);
  await screen.findByRole("region", { name: "Export" });
  await user.click(part().getByRole("checkbox", { name: "Mark the file as UTF-8" }));
  await user.click(part().getByRole("radio", { name: "sessions" }));
  await user.click(part().getByRole("button", { name: "Save as CSV" }));
  await screen.findAllByText(/^1 row handed/);
  expect((await text()).split("\r\n")[1]).toContain(",1,free,,1,2,1,1:23.4,83.4,");
  await user.click(part().getByRole("radio", { name: "targets" }));
  await user.click(part().getByRole("button", { name: "Save as CSV" }));
  await screen.findAllByText(/as My-logbook-targets-2026-11-25\.csv/);
  expect((await text()).split("\r\n")[1]).toBe(
    "Club hatch,'=Varnholt,,best lap,,82.5,s,2026-12-24,2026-11-25,,,,,",
  );
  await user.click(part().getByRole("radio", { name: "rig records" }));
  await user.click(part().getByRole("button", { name: "Save as CSV" }));
  await screen.findAllByText(/^0 rows handed/);
  expect((await text()).startsWith("from,name,screen,")).toBe(true);
});
