import { screen, waitFor } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { addRun, setTarget } from "#db";
import { addSessions } from "../../../support/addSessions.ts";
import {
  aCombo,
  entryField,
  lapRows,
  openWith,
  pauseToRead,
  renderLog,
  runBlock,
} from "../../../support/logPage.tsx";
import { pick } from "../../../support/pick.ts";

const editLap = (number: number) => screen.findByRole("button", { name: new RegExp(`^Edit lap ${number}:`) });
const undo = () => screen.getByRole("button", { name: "Undo" });

describe("the rows of a run", () => {
  it("tell each lap to the last clean one, to the PB as it stood, and to the target", async () => {
    await renderLog(async (book) => {
      const comboId = await aCombo(book);
      await addSessions(book, comboId, [{ date: "2026-11-10", laps: [84_500] }]);
      await setTarget(book, { comboId, kind: "best", value: 84_000, setOn: "2026-11-10" });
      const off = { ms: 95_000, remarks: [{ kind: "off" as const, corner: 5 }] };
      await openWith(book, [84_700, 84_400, off, 84_450], comboId);
    });
    await entryField();
    expect(lapRows(1)).toEqual([
      ["1", expect.stringContaining("1:24.700"), "", "+0.200", "+0.700", ""],
      ["2", expect.stringContaining("1:24.400"), "−0.300 faster", "−0.100", "+0.400", "PB"],
      ["3", expect.stringContaining("1:35.000"), "+10.600 slower", "+10.600", "+11.000", "off, corner 5"],
      ["4", expect.stringContaining("1:24.450"), "+0.050 slower", "+0.050", "+0.450", ""],
    ]);
    expect(screen.getByText(/19:00 · best-lap target 1:24\.000/)).toBeVisible();
    expect(screen.getByRole("button", { name: /^Figures/ })).toHaveTextContent(
      /0 of 3 laps at 1:24\.000 or under; best \+0\.400 s, usual \+0\.450 s/,
    );
  });

  it("never take a lap in tenths for a PB that it may only equal", async () => {
    await renderLog((book) => openWith(book, [84_450, { ms: 84_400, decimals: 1 }]));
    await entryField();
    expect(lapRows(1)[1]?.at(-1)).toBe("in tenths");
    expect(lapRows(1)[1]?.[1]).toContain("1:24.4");
  });

  it("say what a lap that was worked out counts as, where its known digits do not show it", async () => {
    await renderLog((book) =>
      openWith(book, [{ ms: 84_420, decimals: 1 }, 84_900, { ms: 85_450, decimals: 1 }]),
    );
    await entryField();
    expect(lapRows(1).map((row) => row.at(-1))).toEqual([
      "PB · counted as 1:24.42 · in tenths",
      "",
      "counted as 1:25.45 · in tenths",
    ]);
  });
});

describe("sectors typed in tenths", () => {
  it("stand in the table with the digits that were typed, and are edited in these digits", async () => {
    const { user } = await renderLog((book) => openWith(book, []));
    await user.type(await entryField(), "1:23.420 27.1 31.42 24.900{Enter}");
    expect(await editLap(1)).toHaveTextContent("1:23.420");
    expect(lapRows(1)[0]?.slice(-4, -1)).toEqual(["27.1", "31.42", "24.900"]);
    await user.click(await editLap(1));
    const field = await screen.findByRole("textbox", { name: "Lap 1" });
    expect(field).toHaveValue("1:23.420 27.1 31.42 24.900");
    await user.clear(field);
    await user.type(field, "1:23.420 27.10 31.42 24.9{Enter}");
    await waitFor(() => expect(lapRows(1)[0]?.slice(-4, -1)).toEqual(["27.10", "31.42", "24.9"]));
  });
});

describe("the rows of a run on a phone", () => {
  afterEach(() => vi.unstubAllGlobals());

  it("have the target under the PB and the sectors on a line of their own", async () => {
    vi.stubGlobal("matchMedia", (query: string) => ({
      matches: query.startsWith("(max-width: 719px)"),
      addEventListener: () => undefined,
      removeEventListener: () => undefined,
    }));
    const sectored = { ms: 84_900, sectors: [27_100, 32_900, 24_900], sectorDecimals: [1, 3, 3] };
    await renderLog(async (book) => {
      const comboId = await aCombo(book);
      await setTarget(book, { comboId, kind: "best", value: 84_000, setOn: "2026-11-10" });
      await openWith(book, [84_700, sectored], comboId);
    });
    await entryField();
    expect(
      runBlock(1)
        .getAllByRole("columnheader")
        .map((head) => head.textContent),
    ).toEqual(["lap", "time", "to last clean", "to PBto target", "remarks"]);
    const rows = lapRows(1);
    expect(rows[1]?.[3]).toBe("+0.200 +0.900 to target");
    expect(rows[2]).toEqual(["", "sectors 27.1 · 32.900 · 24.900"]);
  });
});

describe("a lap edited in place", () => {
  it("is stored by Enter with the decimals that were typed, and Undo brings the old one back", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700, 84_900]));
    await user.click(await editLap(2));
    const field = await screen.findByRole("textbox", { name: "Lap 2" });
    await waitFor(() => expect(field).toHaveFocus());
    expect(field).toHaveValue("1:24.900");
    await user.clear(field);
    await user.type(field, "1:24.5 / from memory{Enter}");
    await waitFor(async () =>
      expect(await screen.findByRole("button", { name: /^Edit lap 2:\s?1:24\.5$/ })).toHaveFocus(),
    );
    expect(screen.getByText("from memory")).toBeVisible();
    await user.click(undo());
    expect(await screen.findByRole("button", { name: /^Edit lap 2:\s?1:24\.900$/ })).toBeVisible();
  });

  it("is left as it was by Escape", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700]));
    await user.click(await editLap(1));
    await user.type(await screen.findByRole("textbox", { name: "Lap 1" }), "c{Escape}");
    await waitFor(async () => expect(await editLap(1)).toHaveFocus());
    expect(lapRows(1)[0]?.at(-1)).not.toContain("cut");
    await user.click(await editLap(1));
    expect(await screen.findByRole("textbox", { name: "Lap 1" })).toHaveValue("1:24.700");
  });

  it("keeps a text that cannot be read, with what would be right", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700]));
    await user.click(await editLap(1));
    const field = await screen.findByRole("textbox", { name: "Lap 1" });
    await user.clear(field);
    await user.type(field, "x{Enter}");
    expect(field).toHaveValue("x");
    expect(field).toBeInvalid();
  });

  it("is judged by all but itself, and asks for a second, separate Enter before it is odd", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_900, 84_700, 84_800]));
    await user.click(await editLap(3));
    const field = await screen.findByRole("textbox", { name: "Lap 3" });
    await user.clear(field);
    await user.type(field, "200:00.0{Enter}");
    expect(await screen.findByText(/^3:20:00\.0 is more than 3 times .* Store it again/)).toBeVisible();
    await user.keyboard("{Enter}");
    expect(field).toHaveValue("200:00.0");
    await pauseToRead();
    await user.keyboard("{Enter}");
    await waitFor(() => expect(lapRows(1)[2]?.[1]).toContain("3:20:00.0"));
    expect(await screen.findByText("24700 is enough for 1:24.700")).toBeVisible();
    // A note alone is no new time.
    await user.click(await editLap(3));
    await user.type(await screen.findByRole("textbox", { name: "Lap 3" }), " / asleep{Enter}");
    await waitFor(() => expect(lapRows(1)[2]?.at(-1)).toContain("asleep"));
    expect(await screen.findByText("24700 is enough for 1:24.700")).toBeVisible();
    // Put right, it counts again.
    await user.click(await editLap(3));
    const again = await screen.findByRole("textbox", { name: "Lap 3" });
    await user.clear(again);
    await user.type(again, "1:24.8{Enter}");
    expect(await screen.findByText("4800 is enough for 1:24.800")).toBeVisible();
  });

  it("is deleted, and comes back by Undo", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700, 84_900]));
    await user.click(await editLap(1));
    await user.click(await screen.findByRole("button", { name: "Delete" }));
    await waitFor(() => expect(lapRows(1)).toHaveLength(1));
    await waitFor(async () => expect(await entryField()).toHaveFocus());
    await user.click(undo());
    await waitFor(() => expect(lapRows(1).map(([, time]) => time)).toHaveLength(2));
    expect(lapRows(1)[0]?.[1]).toContain("1:24.700");
  });

  it("is no PB any more in one tap", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_900, 84_700]));
    await entryField();
    expect(lapRows(1).map((row) => row.at(-1))).toEqual(["was PB", "PB"]);
    await user.click(await editLap(2));
    await user.click(await screen.findByRole("button", { name: "Not my PB" }));
    await user.click(await screen.findByRole("button", { name: "Cancel" }));
    await waitFor(() => expect(lapRows(1).map((row) => row.at(-1))).toEqual(["PB", "not a PB"]));
  });

  it("moves to another run only by the button, called by its number on the page", async () => {
    const { user } = await renderLog(async (book) => {
      const { sessionId } = await openWith(book, [84_700, 84_900]);
      await addRun(book, { sessionId });
    });
    await user.click(await screen.findByRole("button", { name: "Show laps" }));
    await user.click(await editLap(2));
    const list = await screen.findByLabelText("Move to");
    pick(list, "run 2");
    expect(lapRows(1)).toHaveLength(2);
    await user.click(screen.getByRole("button", { name: "Move" }));
    await waitFor(() =>
      expect(lapRows(2).map(([, time]) => time)).toEqual([expect.stringContaining("1:24.900")]),
    );
    await user.click(undo());
    await waitFor(() =>
      expect(screen.queryByRole("table", { name: "Laps of run 2" })).not.toBeInTheDocument(),
    );
  });

  it("moves to a new run, which is the one being driven from then on", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700, 84_900]));
    await user.click(await editLap(2));
    expect(screen.queryByLabelText("Move to")).not.toBeInTheDocument();
    await user.click(await screen.findByRole("button", { name: "Move to a new run" }));
    await waitFor(() => expect(lapRows(2)).toHaveLength(1));
    expect(screen.getByLabelText("Lap 2")).toBe(await entryField());
  });
});
