import { screen, waitFor } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import {
  addRun,
  bringBack,
  deleteLap,
  deleteSession,
  endSession,
  type Logbook,
  moveLaps,
  openLogbook,
  openShelf,
  readDrafts,
  writeDraft,
} from "#db";
import { useDevice } from "#state/device.ts";
import {
  entryField,
  lapRows,
  openWith,
  pauseToRead,
  renderLog,
  runBlock,
} from "../../../support/logPage.tsx";
import type { Rendered } from "../../../support/renderAt.tsx";

const three = [84_900, 84_700, 84_800];
const lap = (number: number) => screen.findByRole("button", { name: new RegExp(`^Edit lap ${number}:`) });
const button = (name: string | RegExp) => screen.findByRole("button", { name });
const nameOfBook = () => useDevice.getState().logbook ?? "";

/** A page with three laps in an open session, and a second hand on the same logbook, as another tab would have. */
async function threeLaps() {
  let ids = { sessionId: "", runId: "" };
  const page = await renderLog(async (book) => {
    ids = await openWith(book, three);
  });
  const elsewhere = async <R,>(work: (book: Logbook) => Promise<R>) => {
    const book = await openLogbook({ name: nameOfBook(), ...page.surroundings });
    return work(book).finally(() => book.close());
  };
  return { ...page, ...ids, elsewhere };
}

/** What is kept of typed text, once nothing is on its way any more. */
async function kept({ surroundings }: Pick<Rendered, "surroundings">) {
  const shelf = await openShelf(surroundings);
  return readDrafts(shelf).finally(() => shelf.close());
}

const offer = () => screen.findByText(/^Half typed here in a tab that is closed/);

describe("what is half typed belongs to its tab", () => {
  it("is not seen in another tab while its own is open", async () => {
    const { user, otherTab } = await threeLaps();
    await user.type(await entryField(), "4912");
    otherTab("open");
    const field = await entryField();
    await lap(3);
    await user.type(field, "5{Backspace}");
    expect(field).toHaveValue("");
    expect(screen.queryByText(/^Half typed/)).not.toBeInTheDocument();
  });

  it("is straight back in the field when the only tab was closed and the app is opened again", async () => {
    const { user, otherTab } = await threeLaps();
    await user.type(await entryField(), "4912");
    otherTab("closed");
    await waitFor(async () => expect(await entryField()).toHaveValue("4912"));
    expect(screen.queryByText(/^Half typed/)).not.toBeInTheDocument();
  });

  it("is offered where its tab is closed and others are open, with the time, and taken up once", async () => {
    const { user, otherTab, closeFirstTab, reload, ...page } = await threeLaps();
    await user.type(await entryField(), "4912");
    otherTab("open");
    otherTab("open");
    closeFirstTab();
    reload();
    expect(await offer()).toHaveTextContent(
      "Half typed here in a tab that is closed, Wednesday 25 November, 19:00: 4912",
    );
    expect(await entryField()).toHaveValue("");
    await user.click(await button("Take it up"));
    expect(await entryField()).toHaveValue("4912");
    expect(screen.queryByText(/^Half typed/)).not.toBeInTheDocument();
    await waitFor(async () => expect(await kept(page)).toHaveLength(1));
    reload();
    await waitFor(async () => expect(await entryField()).toHaveValue("4912"));
    await user.type(await entryField(), "{Enter}");
    expect(await lap(4)).toHaveTextContent("1:24.912");
  });

  it("is never written over by what is offered: the field has to be free first", async () => {
    const { user, otherTab, closeFirstTab, reload } = await threeLaps();
    await user.type(await entryField(), "4912");
    otherTab("open");
    otherTab("open");
    closeFirstTab();
    reload();
    await offer();
    await user.type(await entryField(), "50");
    expect(await offer()).toHaveTextContent(/It can be taken up once what you are typing now is stored/);
    expect(screen.queryByRole("button", { name: "Take it up" })).not.toBeInTheDocument();
    expect(await entryField()).toHaveValue("50");
  });

  it("is gone for good once the driver lets it go", async () => {
    const { user, otherTab, closeFirstTab, reload, ...page } = await threeLaps();
    await user.type(await entryField(), "4912");
    otherTab("open");
    otherTab("open");
    closeFirstTab();
    reload();
    await offer();
    await user.click(await button("Let it go"));
    await waitFor(async () => expect(await kept(page)).toEqual([]));
    reload();
    await lap(3);
    expect(screen.queryByText(/^Half typed/)).not.toBeInTheDocument();
  });

  it("is read as an older version of the app kept it, for no tab in particular", async () => {
    const { otherTab, sessionId, surroundings } = await threeLaps();
    await lap(3);
    const shelf = await openShelf(surroundings);
    const state = { text: "1:24.9 / wide", lines: [] };
    await writeDraft(shelf, { key: `${nameOfBook()}/entry ${sessionId}`, text: "", state });
    shelf.close();
    otherTab("closed");
    await waitFor(async () => expect(await entryField()).toHaveValue("1:24.9 / wide"));
  });

  it("stores the lines of a closed tab for which Enter was pressed, without a question", async () => {
    const { otherTab, sessionId, runId, surroundings } = await threeLaps();
    await lap(3);
    const shelf = await openShelf(surroundings);
    const line = {
      id: surroundings.newId(),
      runId,
      text: "1:24.5",
      lap: { ms: 84_500, decimals: 1, remarks: [], source: "typed" },
    };
    const state = { text: "4912", lines: [line], begunIn: runId };
    const row = { text: "4912", state, tab: "gone", at: 0 };
    await writeDraft(shelf, { key: `${nameOfBook()}/entry ${sessionId}|gone`, ...row });
    shelf.close();
    otherTab("open");
    expect(await lap(4)).toHaveTextContent("1:24.5");
    expect(await offer()).toHaveTextContent("4912");
    expect(screen.getAllByRole("row")).toHaveLength(5);
  });

  it("in the start form comes back as well", async () => {
    const { user, otherTab } = await renderLog();
    await user.type(await screen.findByRole("combobox", { name: "Car" }), "Club hatch");
    otherTab("closed");
    await waitFor(() => expect(screen.getByRole("combobox", { name: "Car" })).toHaveValue("Club hatch"));
  });
});

describe("a line whose run has ended while it was half typed", () => {
  it("is stored nowhere by Enter, and one more key reaches the run it was begun in", async () => {
    const { user, elsewhere, sessionId } = await threeLaps();
    await user.type(await entryField(), "4912");
    await elsewhere((book) => addRun(book, { sessionId }));
    expect(await screen.findByText(/It was begun in run 1, which has ended since/)).toBeVisible();
    await user.type(await entryField(), "{Enter}{Enter}");
    await pauseToRead();
    await user.keyboard("{Enter}");
    expect(await entryField()).toHaveValue("4912");
    expect(screen.getByText(/Say first where it belongs/)).toBeVisible();
    await user.tab();
    await waitFor(async () => expect(await button("Add it to run 1")).toHaveFocus());
    await user.keyboard("{Enter}");
    await waitFor(async () => expect(await entryField()).toHaveFocus());
    expect(await entryField()).toHaveValue("");
    await user.click(await button("Show laps"));
    await waitFor(() => expect(lapRows(1)).toHaveLength(4));
    expect(lapRows(1)[3]?.[1]).toContain("1:24.912");
  });

  it("goes to the new run where the driver says so", async () => {
    const { user, elsewhere, sessionId } = await threeLaps();
    await user.type(await entryField(), "4912");
    await elsewhere((book) => addRun(book, { sessionId }));
    await user.click(await button("Add it to run 2"));
    await waitFor(() => expect(lapRows(2)).toHaveLength(1));
    expect(lapRows(2)[0]?.[1]).toContain("1:24.912");
  });

  it("keeps asking after a reload, and no more once the line is emptied and begun anew", async () => {
    const { user, elsewhere, sessionId, reload } = await threeLaps();
    await user.type(await entryField(), "4912");
    await elsewhere((book) => addRun(book, { sessionId }));
    await button("Add it to run 1");
    reload();
    await button("Add it to run 1");
    await user.clear(await entryField());
    await user.type(await entryField(), "5012{Enter}");
    await waitFor(() => expect(lapRows(2)).toHaveLength(1));
  });

  it("asks too when the run was ended here, but not for what is typed after that", async () => {
    const { user } = await threeLaps();
    await user.type(await entryField(), "4912");
    await user.click(await button("End run"));
    await button("Add it to run 1");
    expect(runBlock(2).queryAllByRole("row")).toHaveLength(0);
  });

  it("stays on the page when its session was ended elsewhere, and can still be added to its run", async () => {
    const { user, elsewhere, sessionId } = await threeLaps();
    await user.type(await entryField(), "4912");
    await elsewhere((book) => endSession(book, { sessionId }));
    expect(await screen.findByText(/^Half typed in/)).toHaveTextContent(
      "Half typed in the session of Wed 25 Nov 2026, Varnholt Ring · Club hatch, which has ended: 4912",
    );
    await user.click(await button("Go to it"));
    expect(await screen.findByRole("textbox", { name: "Half typed when the session ended" })).toHaveValue(
      "4912",
    );
    await user.click(await button("Add it to run 1"));
    await waitFor(() => expect(lapRows(1)).toHaveLength(4));
    expect(screen.queryByRole("textbox", { name: /^Half typed/ })).not.toBeInTheDocument();
  });

  it("stays on the page when its session was deleted elsewhere, and comes back with it", async () => {
    const { user, elsewhere, sessionId } = await threeLaps();
    window.location.hash = `#/log/${sessionId}`;
    await user.type(await entryField(), "4912");
    await elsewhere((book) => deleteSession(book, { sessionId }));
    expect(await screen.findByText(/^Half typed in this session/)).toHaveTextContent("4912");
    await user.click(await button("Bring the session back"));
    await waitFor(async () => expect(await entryField()).toHaveValue("4912"));
    await elsewhere((book) => bringBack(book, { table: "sessions", id: sessionId }));
  });

  it("asks of pasted laps, too", async () => {
    const { user, elsewhere, sessionId } = await threeLaps();
    await user.click(await entryField());
    await user.paste("1:24.9\n1:25.0");
    await button("Add 2 laps");
    await elsewhere((book) => addRun(book, { sessionId }));
    await button("Add 2 laps to run 2");
    await user.click(await button("Add 2 laps to run 1"));
    await user.click(await button("Show laps"));
    await waitFor(() => expect(lapRows(1)).toHaveLength(5));
  });
});

describe("a half-typed edit", () => {
  const halfEdited = async () => {
    const page = await threeLaps();
    await page.user.click(await lap(2));
    const editor = await screen.findByRole("textbox", { name: "Lap 2" });
    await page.user.clear(editor);
    await page.user.type(editor, "1:24.650 / late");
    const lapIdOf = (book: Logbook) =>
      book.tables.runs.get(page.runId).then((run) => run?.laps.find(({ n }) => n === 2)?.id ?? "");
    const deleted = () =>
      page.elsewhere(async (book) => deleteLap(book, { runId: page.runId, lapId: await lapIdOf(book) }));
    return { ...page, lapIdOf, deleted };
  };
  const lost = () => screen.findByRole("textbox", { name: "What you typed for lap 2" });

  it("stays on screen when its lap is deleted elsewhere, and can bring the lap back", async () => {
    const { user, deleted } = await halfEdited();
    await deleted();
    expect(await lost()).toHaveValue("1:24.650 / late");
    await waitFor(async () => expect(await lost()).toHaveFocus());
    expect(screen.getByText(/was deleted/)).toBeVisible();
    await user.keyboard(" in 3");
    await user.click(await button("Bring the lap back"));
    const editor = await screen.findByRole("textbox", { name: "Lap 2" });
    await waitFor(() => expect(editor).toHaveValue("1:24.650 / late in 3"));
    await user.type(editor, "{Enter}");
    await waitFor(async () => expect(await lap(2)).toHaveTextContent("1:24.650"));
    expect(screen.queryByText(/was deleted/)).not.toBeInTheDocument();
  });

  it("can become a new lap instead, or be let go", async () => {
    const { user, deleted, reload } = await halfEdited();
    await deleted();
    await lost();
    reload();
    expect(await lost()).toHaveValue("1:24.650 / late");
    await user.click(await button("Store it as a new lap of run 1"));
    await waitFor(() => expect(lapRows(1)).toHaveLength(3));
    expect(lapRows(1)[2]?.[1]).toContain("1:24.650");
    expect(screen.queryByText(/was deleted/)).not.toBeInTheDocument();
  });

  it("goes along when its lap is moved to another run", async () => {
    const { elsewhere, lapIdOf, runId, sessionId } = await halfEdited();
    await elsewhere(async (book) =>
      moveLaps(book, { from: runId, lapIds: [await lapIdOf(book)], to: { newRunIn: sessionId } }),
    );
    const editor = await screen.findByRole("textbox", { name: "Lap 1" });
    await waitFor(() => expect(editor).toHaveValue("1:24.650 / late"));
  });

  it("is offered after a reload, and gone once it is cancelled", async () => {
    const { user, reload, ...page } = await halfEdited();
    reload();
    expect(await screen.findByText(/^Half typed in lap 2 of run 1/)).toHaveTextContent("1:24.650 / late");
    await user.click(await button("Go on with it"));
    const editor = await screen.findByRole("textbox", { name: "Lap 2" });
    await waitFor(() => expect(editor).toHaveValue("1:24.650 / late"));
    await user.type(editor, "{Escape}");
    await waitFor(async () => expect(await kept(page)).toEqual([]));
    await waitFor(() => expect(screen.queryByText(/^Half typed/)).not.toBeInTheDocument());
  });

  it("of another tab that is open is not seen in this one, and stays when this one cancels its own", async () => {
    const { user, otherTab, ...page } = await halfEdited();
    otherTab("open");
    await user.click(await lap(2));
    const editor = await screen.findByRole("textbox", { name: "Lap 2" });
    expect(editor).toHaveValue("1:24.700");
    await user.type(editor, "5{Escape}");
    await user.type(await entryField(), "1:24.900{Enter}");
    await lap(4);
    expect(screen.queryByText(/^Half typed/)).not.toBeInTheDocument();
    await waitFor(async () =>
      expect((await kept(page)).map(({ text }) => text)).toEqual(["1:24.650 / late"]),
    );
  });

  it("is offered as an older version of the app kept it", async () => {
    const { user, surroundings, elsewhere, runId, otherTab } = await threeLaps();
    await lap(3);
    const lapId = await elsewhere(async (book) => (await book.tables.runs.get(runId))?.laps[1]?.id);
    const shelf = await openShelf(surroundings);
    const text = "1:24.650 / late";
    await writeDraft(shelf, { key: `${nameOfBook()}/lap ${lapId}`, text, state: text });
    shelf.close();
    otherTab("closed");
    expect(await screen.findByText(/^Half typed in lap 2 of run 1/)).toHaveTextContent(text);
    await user.click(await button("Go on with it"));
    const editor = await screen.findByRole("textbox", { name: "Lap 2" });
    await waitFor(() => expect(editor).toHaveValue(text));
  });
});

describe("what is half typed in a form", () => {
  const dialogOf = async (user: Rendered["user"]) => {
    await user.click(await button("Session"));
    return screen.findByRole("dialog", { name: "This session" });
  };

  it("stays to be copied when its session is deleted elsewhere, also after a reload, until it is let go", async () => {
    const { user, elsewhere, sessionId, reload, ...page } = await threeLaps();
    await dialogOf(user);
    await user.type(screen.getByLabelText("Note to yourself"), "brake later at 3");
    await elsewhere((book) => deleteSession(book, { sessionId }));
    const said = /^Half typed in a note on a session or a run, which is not in this logbook any more/;
    expect(await screen.findByText(said)).toHaveTextContent("brake later at 3");
    reload();
    expect(await screen.findByText(said)).toHaveTextContent("brake later at 3");
    await user.click(await button("Let it go"));
    await waitFor(async () => expect(await kept(page)).toEqual([]));
    await waitFor(() => expect(screen.queryByText(said)).not.toBeInTheDocument());
  });

  it.each([
    ["target", "a target", "1:22.5"],
    ["review", "a replay review", "corner 5: h . 0.3"],
  ])("about a %s that is gone is offered on Log", async (kind, named, text) => {
    const { surroundings, otherTab } = await threeLaps();
    await lap(3);
    const shelf = await openShelf(surroundings);
    const key = `${nameOfBook()}/${kind} ${surroundings.newId()}|gone`;
    await writeDraft(shelf, { key, text, state: { value: text }, tab: "gone" });
    shelf.close();
    otherTab("closed");
    expect(await screen.findByText(new RegExp(`^Half typed in ${named}, which is not`))).toHaveTextContent(
      text,
    );
  });

  it("that is no target of the day is said and kept, over closing the dialog and a reload", async () => {
    const { user, reload } = await threeLaps();
    await dialogOf(user);
    await user.type(screen.getByLabelText("Target of the day"), "1:22 or less");
    await user.click(await button("Done"));
    reload();
    await dialogOf(user);
    await waitFor(() => expect(screen.getByLabelText("Target of the day")).toHaveValue("1:22 or less"));
    expect(screen.getByLabelText("Target of the day")).toBeInvalid();
  });
});
