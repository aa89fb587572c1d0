import { readFileSync } from "node:fs";
import { screen, waitFor, within } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import {
  addLap,
  addRig,
  draftKey,
  draftsFrom,
  dump,
  type Logbook,
  lastSession,
  openLogbook,
  openShelf,
  runsOfSession,
  writeDraft,
} from "#db";
import { useDevice } from "#state/device.ts";
import { DataScreen } from "../../../../src/screens/data/DataScreen.tsx";
import { aLap } from "../../../support/aLap.ts";
import { type Rendered, renderAt } from "../../../support/renderAt.tsx";

afterEach(() => vi.unstubAllGlobals());

const rowOf = (title: string) =>
  waitFor(() => {
    const row = screen.getAllByRole("listitem").find((one) => within(one).queryByText(title));
    if (row === undefined) throw new Error(`${title} stands in no list`);
    return within(row);
  });
const add = async (user: Awaited<ReturnType<typeof renderAt>>["user"], title: string) => {
  const field = await screen.findByRole("textbox", { name: "Name of a new, empty logbook" });
  await user.type(field, `${title}{Enter}`);
  await waitFor(() => expect(field).toHaveValue(""));
};

describe("the list of logbooks", () => {
  it("adds an empty one, opens it, and names it anew", async () => {
    const { user } = await renderAt("#/data", <DataScreen />);
    await add(user, "Rain evenings");
    const row = await rowOf("Rain evenings");
    expect(row.getByText("never opened")).toBeVisible();
    await user.click(row.getByRole("button", { name: "Open", description: "Rain evenings" }));
    expect(await (await rowOf("Rain evenings")).findByText("open now")).toBeVisible();
    await user.click((await rowOf("Rain evenings")).getByRole("button", { name: "Rename" }));
    const field = screen.getByRole("textbox", { name: "New name of the logbook" });
    expect(field).toHaveFocus();
    await user.clear(field);
    await user.click(screen.getByRole("button", { name: "Rename", description: "" }));
    expect(field).toHaveAccessibleDescription(/A logbook needs a name/);
    await user.type(field, "Wet evenings{Enter}");
    expect(await (await rowOf("Wet evenings")).findByText("open now")).toBeVisible();
    await waitFor(() => expect(screen.queryByText("Rain evenings")).toBeNull());
  });

  it("shows markup and turned writing as the text it is, and refuses a name too long, keeping it", async () => {
    const { user } = await renderAt("#/data", <DataScreen />);
    const hostile = "<img src=x onerror=alert(1)> \u202Eevil";
    await add(user, hostile);
    expect((await screen.findByText(/onerror/)).tagName).toBe("BDI");
    const field = screen.getByRole("textbox", { name: "Name of a new, empty logbook" });
    await user.click(field);
    await user.paste("x".repeat(500));
    await user.keyboard("{Enter}");
    expect(field).toHaveAccessibleDescription(/500 signs; at most 200/);
    expect(field).toHaveValue("x".repeat(500));
  });

  it("removes the open one only after the word is typed, and opens the other", async () => {
    const { user } = await renderAt("#/data", <DataScreen />);
    await add(user, "Second");
    await user.click((await rowOf("My logbook")).getByRole("button", { name: "Remove" }));
    const dialog = screen.getByRole("alertdialog", { name: "Remove a logbook" });
    expect(within(dialog).getByRole("button", { name: "Keep it" })).toHaveFocus();
    expect(within(dialog).getByRole("button", { name: "Save a backup first" })).toBeVisible();
    await user.click(within(dialog).getByRole("button", { name: "Remove for good" }));
    const word = within(dialog).getByRole("textbox", { name: "Type “remove” to confirm" });
    expect(word).toHaveAccessibleDescription(/was not removed/);
    await user.type(word, "Remove");
    await user.click(within(dialog).getByRole("button", { name: "Remove for good" }));
    expect(await screen.findByText("1 in this browser")).toBeVisible();
    expect(await (await rowOf("Second")).findByText("open now")).toBeVisible();
    const left = (await indexedDB.databases()).filter(({ name }) => name?.startsWith("lap-ledger-"));
    expect(left).toHaveLength(1);
  });

  it("gives an empty logbook when the last one is removed", async () => {
    const { user } = await renderAt("#/data", <DataScreen />, (book) =>
      addRig(book, {
        from: "2026-01-01",
        name: "",
        screen: {},
        view: {},
        wheel: {},
        pedals: {},
        seat: {},
        note: "",
      }),
    );
    await user.click((await rowOf("My logbook")).getByRole("button", { name: "Remove" }));
    await user.type(screen.getByRole("textbox", { name: /to confirm/ }), "remove");
    await user.click(screen.getByRole("button", { name: "Remove for good" }));
    expect(await screen.findAllByText("“My logbook” is removed.")).not.toHaveLength(0);
    expect(await screen.findByText("open now")).toBeVisible();
    expect(screen.getByText("1 in this browser")).toBeVisible();
  });
});

describe("the demo", () => {
  it("is loaded beside the own logbook and removed again, each with one button", async () => {
    const demo = readFileSync("demo-data/demo-logbook.json", "utf8");
    vi.stubGlobal("fetch", async () => new Response(demo));
    const { user } = await renderAt("#/data", <DataScreen />);
    await user.click(await screen.findByRole("button", { name: "Load the demo logbook" }));
    expect(await screen.findByText("demo · open now")).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Remove the demo logbook" }));
    expect(await screen.findByText("1 in this browser")).toBeVisible();
    expect(await (await rowOf("My logbook")).findByText("open now")).toBeVisible();
  });

  const inTheDemo = async (
    work: (book: Logbook) => Promise<unknown>,
    fill?: Parameters<typeof renderAt>[2],
  ) => {
    const demo = readFileSync("demo-data/demo-logbook.json", "utf8");
    vi.stubGlobal("fetch", async () => new Response(demo));
    const page = await renderAt("#/data", <DataScreen />, fill);
    await page.user.click(await screen.findByRole("button", { name: "Load the demo logbook" }));
    await screen.findByText("demo · open now");
    const book = await openLogbook({ ...page.surroundings, name: useDevice.getState().logbook ?? "" });
    await work(book);
    book.close();
    return page;
  };
  /** A lap typed into the session of the demo that was driven last. */
  const aTypedLap = async (book: Logbook) => {
    const last = await lastSession(book, Number.MAX_SAFE_INTEGER);
    const [run] = last ? await runsOfSession(book, last.id) : [];
    await addLap(book, {
      runId: run?.id ?? "",
      id: "00000000-0000-7000-8000-00000000aaaa",
      lap: aLap(91_234),
    });
  };
  const rowsOfOpen = async ({ surroundings }: Pick<Rendered, "surroundings">) => {
    const book = await openLogbook({ ...surroundings, name: useDevice.getState().logbook ?? "" });
    return dump(book).finally(() => book.close());
  };

  it("names the laps typed in it before it goes, and moves them to the own logbook first", async () => {
    const page = await inTheDemo(aTypedLap);
    const { user } = page;
    await user.click(screen.getByRole("button", { name: "Remove the demo logbook" }));
    const dialog = within(await screen.findByRole("alertdialog", { name: "Remove the demo logbook" }));
    expect(dialog.getByText(/^You typed 1 lap in the demo/)).toBeVisible();
    expect(dialog.getByRole("listitem")).toHaveTextContent(/2026, .+: 1 lap$/);
    await waitFor(() => expect(dialog.getByRole("button", { name: "Keep the demo" })).toHaveFocus());
    await user.click(dialog.getByRole("button", { name: /^Move what I typed/ }));
    expect(
      await screen.findAllByText(/^The lap you typed is in “My logbook”\. “Demo.* is removed\.$/),
    ).not.toHaveLength(0);
    expect(await (await rowOf("My logbook")).findByText("open now")).toBeVisible();
    expect(screen.getByText("1 in this browser")).toBeVisible();
    const { runs, sessions, rigs } = await rowsOfOpen(page);
    expect(sessions).toHaveLength(1);
    expect(runs.flatMap(({ laps }) => laps.map(({ ms }) => ms))).toEqual([91_234]);
    expect(rigs).toEqual([]);
  });

  it("makes an own logbook for them where there is none", async () => {
    const page = await inTheDemo(aTypedLap);
    const { user } = page;
    await user.click((await rowOf("My logbook")).getByRole("button", { name: "Remove" }));
    await user.type(screen.getByRole("textbox", { name: /to confirm/ }), "remove");
    await user.click(screen.getByRole("button", { name: "Remove for good" }));
    expect(await screen.findByText("1 in this browser")).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Remove the demo logbook" }));
    await user.click(await screen.findByRole("button", { name: /^Move what I typed/ }));
    await waitFor(async () => expect((await rowOf("My logbook")).getByText("open now")).toBeVisible());
    const { runs } = await rowsOfOpen(page);
    expect(runs.flatMap(({ laps }) => laps.map(({ ms }) => ms))).toEqual([91_234]);
  });

  it("keeps all of it when the driver keeps it, and removes all of it only when told so", async () => {
    const { user } = await inTheDemo(aTypedLap);
    await user.click(screen.getByRole("button", { name: "Remove the demo logbook" }));
    await user.click(await screen.findByRole("button", { name: "Keep the demo" }));
    expect(screen.getByText("demo · open now")).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Remove the demo logbook" }));
    await user.click(await screen.findByRole("button", { name: "Remove all of it" }));
    expect(await screen.findByText("1 in this browser")).toBeVisible();
  });

  it("names what is half typed in it before it goes, in any tab, and moves it too", async () => {
    const { user, surroundings } = await inTheDemo(async () => undefined);
    const shelf = await openShelf(surroundings);
    const about = `${useDevice.getState().logbook}/entry 1`;
    await writeDraft(shelf, { key: draftKey(about, "another tab"), text: "1:31.4 f@3", tab: "another tab" });
    shelf.close();
    await user.click(screen.getByRole("button", { name: "Remove the demo logbook" }));
    const dialog = within(await screen.findByRole("alertdialog", { name: "Remove the demo logbook" }));
    expect(dialog.getByText(/^Half typed in the demo, and not stored yet/)).toBeVisible();
    expect(dialog.getByRole("listitem")).toHaveTextContent("1:31.4 f@3");
    await user.click(dialog.getByRole("button", { name: /^Move what I typed/ }));
    expect(
      await screen.findAllByText(/^What you typed is in “My logbook”\. “Demo.* is removed\.$/),
    ).not.toHaveLength(0);
    const own = await openShelf(surroundings);
    const kept = await draftsFrom(own, `${useDevice.getState().logbook}/`);
    own.close();
    expect(kept).toMatchObject([{ text: "1:31.4 f@3", tab: "another tab" }]);
  });

  it("removes nothing while it cannot be told what was typed in it", async () => {
    const { user } = await inTheDemo(aTypedLap);
    vi.stubGlobal("fetch", async () => Promise.reject(new TypeError("no connection")));
    await user.click(screen.getByRole("button", { name: "Remove the demo logbook" }));
    expect(await screen.findAllByText(/^Demo not removed: it could not be told/)).not.toHaveLength(0);
    expect(screen.getByText("demo · open now")).toBeVisible();
  });

  it("says so when it cannot be fetched, and changes nothing", async () => {
    vi.stubGlobal("fetch", async () => Promise.reject(new TypeError("no connection")));
    const { user } = await renderAt("#/data", <DataScreen />);
    await user.click(await screen.findByRole("button", { name: "Load the demo logbook" }));
    expect(
      await screen.findAllByText(/Demo logbook not loaded\. The file could not be fetched\./),
    ).not.toHaveLength(0);
    expect(screen.getByText("1 in this browser")).toBeVisible();
  });
});
