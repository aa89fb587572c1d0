import { gunzipSync } from "node:zlib";
import { screen, waitFor, within } from "@testing-library/react";
import { beforeEach, describe, expect, it } from "vitest";
import { addCombo, addLap, type Logbook, newestSchema, startSession } from "#db";
import { noRows } from "#domain";
import { writeBackup } from "#files";
import { useDevice } from "#state/device.ts";
import { BackupButton } from "../../../../src/app/BackupButton.tsx";
import { isBackupDue } from "../../../../src/screens/data/backupWords.ts";
import { DataScreen } from "../../../../src/screens/data/DataScreen.tsx";
import { aLap } from "../../../support/aLap.ts";
import { catchDownloads } from "../../../support/downloads.ts";
import { renderAt } from "../../../support/renderAt.tsx";

async function anEvening(book: Logbook) {
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  const { runId } = await startSession(book, { comboId, date: "2026-11-25", zone: "Europe/Berlin" });
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_456) });
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_912) });
}

let saved: ReturnType<typeof catchDownloads>;

beforeEach(() => {
  saved = catchDownloads();
});

/** Presses the button that opens the file dialog, and chooses a file in it. */
async function choose(user: Awaited<ReturnType<typeof renderAt>>["user"], file: File) {
  await user.click(await screen.findByRole("button", { name: "Choose a backup file" }));
  const field = document.querySelector<HTMLInputElement>('input[type="file"]');
  if (field === null) throw new Error("no file dialog was opened");
  await user.upload(field, file);
}
const aFile = (text: string, name = "backup.json") => new File([text], name, { type: "application/json" });

describe("saving a backup", () => {
  it("hands one dated file to the downloads and says when", async () => {
    const { user } = await renderAt("#/data", <DataScreen />, anEvening);
    expect(await screen.findByText(/No backup yet\./)).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Save a backup" }));
    expect(await screen.findByText(/Last backup Wed 25 Nov 2026, today: no lap since\./)).toBeVisible();
    expect(saved[0]?.name).toBe("Lap-Ledger-My-logbook-2026-11-25.json");
    const backup = JSON.parse((await saved[0]?.blob.text()) ?? "");
    expect(backup.counts).toMatchObject({ cars: 1, tracks: 1, combos: 1, sessions: 1, runs: 1 });
  });
});

describe("a smaller backup", () => {
  it("is the same file packed, and the same logbook gives the same bytes", async () => {
    const { user } = await renderAt("#/data", <DataScreen />, anEvening);
    const save = await screen.findByRole("button", { name: "Save a backup" });
    await user.click(save);
    await screen.findByText(/today/);
    await user.click(screen.getByRole("checkbox", { name: /smaller, packed file/ }));
    for (const count of [2, 3]) {
      await waitFor(() => expect(save).toBeEnabled());
      await user.click(save);
      await waitFor(() => expect(saved).toHaveLength(count));
    }
    await waitFor(() => expect(save).toBeEnabled());
    expect(saved[1]?.name).toBe("Lap-Ledger-My-logbook-2026-11-25.json.gz");
    const [plain, first, second] = await Promise.all(saved.map(({ blob }) => blob.arrayBuffer()));
    expect(Buffer.from(gunzipSync(Buffer.from(first as ArrayBuffer)))).toEqual(
      Buffer.from(plain as ArrayBuffer),
    );
    expect(first).toEqual(second);
  });
});

describe("the backup button of a fault", () => {
  it("saves the same file", async () => {
    const { user } = await renderAt("#/rig", <BackupButton />, anEvening);
    const save = await screen.findByRole("button", { name: "Save a backup" });
    await user.click(save);
    await waitFor(() => expect(saved).toHaveLength(1));
    await waitFor(() => expect(save).toBeEnabled());
    expect(screen.getAllByText(/Backup handed to this browser’s downloads/)).not.toHaveLength(0);
    expect(JSON.parse((await saved[0]?.blob.text()) ?? "").counts).toMatchObject({ sessions: 1 });
  });

  it("says so when the logbook has gone, and offers no empty file", async () => {
    const { user } = await renderAt("#/rig", <BackupButton />);
    const button = await screen.findByRole("button", { name: "Save a backup" });
    const { logbook } = useDevice.getState();
    await new Promise((done) => {
      indexedDB.deleteDatabase(logbook ?? "").onsuccess = done;
    });
    await user.click(button);
    expect(await screen.findAllByText(/has disappeared from this browser/)).not.toHaveLength(0);
    expect(saved).toHaveLength(0);
  });
});

describe("the reminder", () => {
  it.each([
    [59, undefined, false],
    [60, undefined, true],
    [99, "2026-11-12", false],
    [100, "2026-11-12", true],
    [1, "2026-11-11", true],
    [1, "2026-11-12", false],
    [0, "2026-01-01", false],
  ])("with %i laps since %s is due: %s", (lapsSinceBackup, lastOn, isDue) => {
    expect(isBackupDue({ lapsSinceBackup }, lastOn, "2026-11-25")).toBe(isDue);
  });
});

describe("restoring", () => {
  it("brings a saved backup back as a logbook of its own, and opens it", async () => {
    const { user } = await renderAt("#/data", <DataScreen />, anEvening);
    await user.click(await screen.findByRole("button", { name: "Save a backup" }));
    await screen.findByText(/today/);
    await choose(user, aFile((await saved[0]?.blob.text()) ?? ""));
    const preview = await screen.findByRole("table", { name: "What the backup holds" });
    expect(within(preview).getByRole("row", { name: "laps 2" })).toBeVisible();
    expect(screen.getByRole("textbox", { name: "Name of the restored logbook" })).toHaveValue(
      "My logbook (2)",
    );
    await user.click(screen.getByRole("button", { name: "Restore as a new logbook" }));
    expect(await screen.findAllByText(/“My logbook \(2\)” is open/)).not.toHaveLength(0);
    expect(await screen.findByText("2 in this browser")).toBeVisible();
    const open = screen.getByText("open now").closest("li");
    expect(open).toHaveTextContent("My logbook (2)");
  });

  it.each([
    ["nothing at all", "", "The file is empty."],
    ["a text", "hello", "This is not a Lap Ledger backup"],
    ["another app’s rows", '{"laps":[]}', "This is from another app"],
    ["half a file", "HALF", "This is not a complete Lap Ledger backup: it breaks off"],
    ["a newer version’s file", "NEWER", "made by a newer version of Lap Ledger"],
    ["a file that lost rows", "FEWER", "it should hold 3 rows of cars, it holds 0"],
  ])("says what is wrong with %s and changes nothing", async (_, text, why) => {
    const whole = await writeBackup(noRows, { title: "Evenings", schema: newestSchema, sha256: undefined });
    const bad = {
      HALF: whole.slice(0, whole.length / 2),
      NEWER: whole.replace(`"schema":${newestSchema}`, `"schema":${newestSchema + 1}`),
      FEWER: whole.replace('"cars":0', '"cars":3'),
    }[text];
    const { user } = await renderAt("#/data", <DataScreen />);
    await choose(user, aFile(bad ?? text, "<script>.json"));
    const alert = await screen.findByText(/was not restored/);
    const notice = alert.closest("p");
    expect(notice).toHaveTextContent("<script>.json was not restored.");
    expect(notice).toHaveTextContent(why);
    expect(notice).toHaveTextContent("Nothing was changed.");
    expect(screen.getByText("1 in this browser")).toBeVisible();
  });

  it("lists rows that are not right, and restores the others when asked to", async () => {
    const { user } = await renderAt("#/data", <DataScreen />, anEvening);
    await user.click(await screen.findByRole("button", { name: "Save a backup" }));
    await screen.findByText(/today/);
    const backup = JSON.parse((await saved[0]?.blob.text()) ?? "");
    delete backup.sha256;
    backup.tables.runs[0].laps[0].ms = "1:23";
    await choose(user, aFile(JSON.stringify(backup)));
    const bad = await screen.findByRole("table", { name: "Rows that cannot be restored" });
    expect(within(bad).getByRole("row", { name: /runs, row 1/ })).toHaveTextContent("laps.0.ms");
    await user.click(screen.getByRole("button", { name: "Restore without this row" }));
    expect(await screen.findAllByText(/is open\. Your other/)).not.toHaveLength(0);
    expect(await screen.findByText("2 in this browser")).toBeVisible();
  });

  it("believes no link, no date to come and no instant beyond the calendar, and says why", async () => {
    const { user } = await renderAt("#/data", <DataScreen />, anEvening);
    await user.click(await screen.findByRole("button", { name: "Save a backup" }));
    await screen.findByText(/today/);
    const backup = JSON.parse((await saved[0]?.blob.text()) ?? "");
    delete backup.sha256;
    const [track] = backup.tables.tracks;
    backup.tables.combos.push({
      ...backup.tables.combos[0],
      id: "00000000-0000-7000-8000-00000000ffff",
      carId: track.id,
    });
    Object.assign(backup.tables.sessions[0], { date: "2036-05-05", zone: "Foo/Bar" });
    Object.assign(backup, { madeAt: Number.MAX_SAFE_INTEGER });
    backup.counts.combos = 2;
    await choose(user, aFile(JSON.stringify(backup)));
    const bad = await screen.findByRole("table", { name: "Rows that cannot be restored" });
    expect(within(bad).getByRole("row", { name: /combos, row/ })).toHaveTextContent(
      "its car is a row of another table",
    );
    expect(within(bad).getByRole("row", { name: /sessions, row 1/ })).toHaveTextContent(
      "dated 2036-05-05, after tomorrow; is this device’s clock right?",
    );
    expect(screen.getByText(/a backup of/)).not.toHaveTextContent("last changed");
  });

  it("stores nothing when cancelled", async () => {
    const { user } = await renderAt("#/data", <DataScreen />);
    await choose(
      user,
      aFile(await writeBackup(noRows, { title: "x".repeat(500), schema: newestSchema, sha256: undefined })),
    );
    const name = await screen.findByRole("textbox", { name: "Name of the restored logbook" });
    await user.click(screen.getByRole("button", { name: "Restore as a new logbook" }));
    expect(name).toHaveAccessibleDescription(/500 signs; at most 200/);
    expect(screen.getByText("1 in this browser")).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Cancel" }));
    expect(screen.queryByRole("textbox", { name: "Name of the restored logbook" })).toBeNull();
  });
});
