import { screen, waitFor } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { noteLaps, openShelf } from "#db";
import { useDevice } from "#state/device.ts";
import { BackupNotice } from "../../../src/app/BackupNotice.tsx";
import { LogScreen } from "../../../src/screens/log/LogScreen.tsx";
import { entryField, openWith } from "../../support/logPage.tsx";
import { type Rendered, renderAt } from "../../support/renderAt.tsx";

const page = (
  <>
    <BackupNotice />
    <LogScreen />
  </>
);

/** A clock that can be right: on another the next session is asked about first. */
const wednesday = Date.UTC(2026, 11, 2, 18);

const backup = () => screen.queryByRole("button", { name: "Save one now" });
const homeScreen = () => screen.queryByText(/app on the home screen/);

/** A browser that has promised nothing and clears what it stores, but for an app on the home screen. */
function aForgetfulBrowser() {
  const persist = vi.fn(async () => false);
  const storage = { persisted: async () => false, persist, estimate: async () => ({}) };
  vi.stubGlobal("navigator", { ...navigator, storage, standalone: false });
  return persist;
}

/** An open session, and so many laps since the last backup, of which there was none. */
async function anEvening(laps: number): Promise<Rendered> {
  const rendered = await renderAt("#/log", page, (book) => openWith(book, [84_700]), wednesday);
  const shelf = await openShelf(rendered.surroundings);
  await noteLaps(shelf, useDevice.getState().logbook ?? "", laps);
  shelf.close();
  rendered.reload();
  await entryField();
  return rendered;
}

async function end({ user }: Rendered) {
  await user.click(screen.getByRole("button", { name: "End session" }));
  await user.click(await screen.findByRole("button", { name: "End the session" }));
  await screen.findByRole("button", { name: "Back to Log" });
}

async function another(rendered: Rendered) {
  await rendered.user.click(screen.getByRole("button", { name: "Back to Log" }));
  await rendered.user.click(await screen.findByRole("button", { name: "Same as last time" }));
  await entryField();
  await end(rendered);
}

afterEach(() => vi.unstubAllGlobals());

describe("the end of a session", () => {
  it("asks for a backup where one is due, and for nothing else, whatever the driver answers", async () => {
    const persist = aForgetfulBrowser();
    const rendered = await anEvening(95);
    expect(backup()).toBeNull();
    await end(rendered);
    await waitFor(() => expect(backup()).toBeVisible());
    expect(screen.getByText("No backup yet: 95 laps.")).toBeVisible();
    await rendered.user.click(screen.getByRole("button", { name: "Later" }));
    expect(backup()).toBeNull();
    expect(homeScreen()).toBeNull();
    expect(persist).not.toHaveBeenCalled();
  });

  it("asks the browser to keep the data where no backup is due, and only after the next one says a word of the home screen", async () => {
    const persist = aForgetfulBrowser();
    const rendered = await anEvening(1);
    await end(rendered);
    await waitFor(() => expect(persist).toHaveBeenCalledOnce());
    expect(useDevice.getState().askedToPersist).toBe(false);
    expect(homeScreen()).toBeNull();
    await another(rendered);
    await waitFor(() => expect(homeScreen()).toBeVisible());
    expect(persist).toHaveBeenCalledOnce();
    await rendered.user.click(screen.getByRole("button", { name: "Understood" }));
    await another(rendered);
    expect(homeScreen()).toBeNull();
    expect(backup()).toBeNull();
    expect(persist).toHaveBeenCalledOnce();
  });
});
