import { act, createEvent, fireEvent, screen, waitFor, within } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { editRun } from "#db";
import { useDevice } from "#state/device.ts";
import { draftsSettled } from "../../../../src/live/keepDraft.ts";
import { addSessions } from "../../../support/addSessions.ts";
import { failingStore } from "../../../support/failingStore.ts";
import { aCombo, entryField, lapRows, openWith, pauseToRead, renderLog } from "../../../support/logPage.tsx";
import { heardLateMs, pass } from "../../../support/waits.ts";

const entry = () => within(screen.getByRole("region", { name: "Entry" }));
const three = [84_900, 84_700, 84_800];
const threeLaps = () => renderLog((book) => openWith(book, three));
const lap = (number: number) => screen.findByRole("button", { name: new RegExp(`^Edit lap ${number}:`) });
/** The driver chose the pad: a page just drawn may hear of it a moment later. */
async function padShown() {
  act(() => useDevice.setState({ pad: "shown" }));
  expect(await entry().findByRole("button", { name: "7" })).toBeVisible();
}

describe("the entry line", () => {
  it("shows at every key what the text becomes, and Enter stores exactly that", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    expect(entry().getByText("4800 is enough for 1:24.800")).toBeVisible();
    await user.type(field, "4912");
    expect(entry().getByText("1:24.912")).toBeVisible();
    expect(entry().getByText("lap 4 · 0.212 s off PB")).toBeVisible();
    await user.clear(field);
    await user.type(field, "24912 f@5");
    expect(entry().getByText("lap 4 · 0.212 s off PB · off, corner 5")).toBeVisible();
    await user.keyboard("{Enter}");
    expect(field).toHaveValue("");
    expect(field).toHaveFocus();
    expect(await lap(4)).toHaveTextContent("1:24.912");
    expect(lapRows(1)[3]).toContain("off, corner 5");
    expect(screen.getByLabelText("Lap 5")).toBe(field);
  });

  it("takes the focus back after Add, for the next lap", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "4912");
    await user.click(entry().getByRole("button", { name: "Add" }));
    await lap(4);
    expect(field).toHaveFocus();
  });

  it("leaves the focus with someone who pressed Tab", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "4912{Enter}");
    await user.tab();
    await lap(4);
    expect(field).not.toHaveFocus();
  });

  it("keeps a text it cannot read and says what would be right", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "912{Enter}");
    expect(field).toHaveValue("912");
    expect(field).toBeInvalid();
    expect(field).toHaveAccessibleDescription(/Three digits alone/);
    expect(screen.getAllByRole("row")).toHaveLength(4);
  });

  it("asks whether an s behind a space and a printed time was a spin, and not behind digits", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "1:26.000 s{Enter}");
    expect(entry().getByRole("alert")).toHaveTextContent(/“s” is read as a spin\..*if it means seconds/);
    await pauseToRead();
    await user.keyboard("{Enter}");
    expect(await lap(4)).toHaveTextContent("1:26.000");
    await user.type(field, "27000 s{Enter}");
    expect(await lap(5)).toHaveTextContent("1:27.000");
    expect(
      lapRows(1)
        .slice(3)
        .map((cells) => cells.at(-1)),
    ).toEqual(["spin", "spin"]);
  });

  it("is the row copied from the ledger again when one is pasted", async () => {
    const { user } = await threeLaps();
    await user.click(await entryField());
    await user.paste("2\t1:25.900\t+0.312\t+0.900\toff, corner 5 / wide");
    await user.click(await screen.findByRole("button", { name: "Add 1 lap" }));
    expect(await lap(4)).toHaveTextContent("1:25.900");
    expect(lapRows(1)[3]?.at(-1)).toBe("off, corner 5 / wide");
  });

  it("takes what a copied row said of its lap along: no PB, from memory", async () => {
    const { user } = await threeLaps();
    await user.click(await entryField());
    await user.paste("2\t1:24.900\t−0.312\t\tnot a PB · from memory");
    expect(await screen.findByRole("cell", { name: "not a PB · from memory" })).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Add 1 lap" }));
    expect(await lap(4)).toHaveTextContent("1:24.900");
    expect(lapRows(1)[3]?.at(-1)).toBe("not a PB · from memory");
  });

  it("asks for a second, separate Enter before a surprising PB; a held key is not one", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "1:20.000{Enter}");
    expect(entry().getByRole("alert")).toHaveTextContent(/Enter again if it is right/);
    fireEvent.keyDown(field, { key: "Enter", repeat: true });
    await user.keyboard("{Enter}");
    expect(field).toHaveValue("1:20.000");
    await pauseToRead();
    await user.keyboard("{Enter}");
    expect(await lap(4)).toHaveTextContent("1:20.000");
    expect(lapRows(1)[3]).toContain("PB");
  });

  it("asks about an absurd lap whatever is known, and once confirmed it moves no short form, over a reload too", async () => {
    const { user, reload } = await renderLog((book) => openWith(book, [83_118]));
    const field = await entryField();
    for (const text of ["200:00.0", "13:23.456", "23:59:59", "2:50.0", "13:23.456 f"]) {
      await user.clear(field);
      await user.type(field, `${text}{Enter}`);
      expect(entry().getByRole("alert"), text).toHaveTextContent(/Enter again if it is right/);
    }
    expect(screen.getAllByRole("row")).toHaveLength(2);
    await user.clear(field);
    await user.type(field, "200:00.0{Enter}");
    await pauseToRead();
    await user.keyboard("{Enter}");
    expect(await lap(2)).toHaveTextContent("3:20:00.0");
    expect(await entry().findByText("23118 is enough for 1:23.118")).toBeVisible();
    reload();
    const again = await entryField();
    expect(await entry().findByText("23118 is enough for 1:23.118")).toBeVisible();
    await user.type(again, "24.9");
    expect(entry().getByText("1:24.9")).toBeVisible();
  });

  it.each([{ surface: "wet" }, { kind: "drill" }] as const)(
    "judges laps with a remark, of wet runs and of drills by the page (%o)",
    async (patch) => {
      const { user } = await renderLog(async (book) => {
        const comboId = await aCombo(book);
        await addSessions(book, comboId, [{ date: "2026-11-10", laps: three }]);
        const { runId } = await openWith(book, [], comboId);
        await editRun(book, { runId, patch });
      });
      const field = await entryField();
      await user.type(field, "13:23.456 f{Enter}");
      expect(entry().getByRole("alert")).toHaveTextContent(
        /more than 3 times your other laps here, 1:24\.800/,
      );
      await user.clear(field);
      await user.type(field, "2:03.456 f{Enter}");
      expect(await lap(1)).toHaveTextContent("2:03.456");
    },
  );

  it("shows no digits that would not be taken", async () => {
    await renderLog((book) => openWith(book, [84_912]));
    await entryField();
    expect(entry().getByText("24912 is enough for 1:24.912")).toBeVisible();
  });

  it("tells two taps by their own time, however late the page hears of them", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    const press = (at: number) => {
      const event = createEvent.keyDown(field, { key: "Enter" });
      Object.defineProperty(event, "timeStamp", { value: at });
      fireEvent(field, event);
    };
    await user.type(field, "4912");
    press(10_000);
    await lap(4);
    await pass(heardLateMs);
    await user.type(field, "4912");
    press(10_900);
    expect(entry().getByRole("alert")).toHaveTextContent("The same lap again?");
    press(11_100);
    expect(field).toHaveValue("4912");
    press(11_200);
    expect(await lap(5)).toHaveTextContent("1:24.912");
    await user.type(field, "4912");
    press(12_300);
    expect(await lap(6)).toHaveTextContent("1:24.912");
  });

  it("asks again when the same lap comes twice within a second", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "4912{Enter}");
    await user.type(field, "4912{Enter}");
    expect(entry().getByRole("alert")).toHaveTextContent("The same lap again?");
    expect(field).toHaveValue("4912");
  });

  it("announces a stored lap and a new PB once, and not again when another lap is edited", async () => {
    const { user } = await threeLaps();
    await user.type(await entryField(), "1:24.600{Enter}");
    await lap(4);
    const said = await entry().findByText("Lap 4 stored, 1:24.600, a new PB");
    await user.click(await lap(3));
    await user.type(await screen.findByRole("textbox", { name: "Lap 3" }), "c{Enter}");
    await waitFor(() => expect(lapRows(1)[2]).toContain("cut"));
    expect(said).toHaveTextContent("Lap 4 stored, 1:24.600, a new PB");
    await user.click(await lap(4));
    await user.click(await screen.findByRole("button", { name: "Delete" }));
    await waitFor(() => expect(lapRows(1)).toHaveLength(3));
    expect(entry().queryByText(/^Lap 3 stored/)).not.toBeInTheDocument();
  });

  it("takes sectors on a layout that nothing is known of, and from then on knows how many there are", async () => {
    const { user } = await renderLog((book) => openWith(book, []));
    const field = await entryField();
    await user.type(field, "17.1 20.42 17.9{Enter}");
    expect(entry().getByRole("alert")).toHaveTextContent("Read as 3 sectors of one lap, 55.42 together.");
    await pauseToRead();
    await user.keyboard("{Enter}");
    expect(await lap(1)).toHaveTextContent("55.4");
    expect(lapRows(1)[0]).not.toContain("from memory");
    await waitFor(async () => {
      await user.clear(field);
      await user.type(field, "17.1 20.42");
      expect(entry().getByText(/^This layout has 3 sectors, and 2 times are typed/)).toBeVisible();
    });
  });

  it("keeps a half-typed line over a reload", async () => {
    const { user, reload } = await threeLaps();
    await user.type(await entryField(), "1:24.9 / wide a");
    reload();
    await waitFor(async () => expect(await entryField()).toHaveValue("1:24.9 / wide a"));
  });
});

describe("keys in the entry line", () => {
  it("Escape empties it, and Escape again or Ctrl Z brings back what stood there, over a reload too", async () => {
    const { user, reload } = await threeLaps();
    const field = await entryField();
    await user.type(field, "1:24.9 / wide{Escape}");
    expect(field).toHaveValue("");
    await user.keyboard("{Escape}");
    expect(field).toHaveValue("1:24.9 / wide");
    await user.keyboard("{Escape}{Control>}z{/Control}");
    expect(field).toHaveValue("1:24.9 / wide");
    await user.keyboard("{Escape}");
    reload();
    const again = await entryField();
    await waitFor(() => expect(again).toHaveFocus());
    await waitFor(async () => {
      if ((again as HTMLInputElement).value === "") await user.keyboard("{Escape}");
      expect(again).toHaveValue("1:24.9 / wide");
    });
  });

  it("the arrow up opens the last lap while it is empty, and the focus comes back to it", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "5{ArrowUp}");
    expect(screen.queryByRole("textbox", { name: "Lap 3" })).not.toBeInTheDocument();
    await user.clear(field);
    await user.keyboard("{ArrowUp}");
    const editor = await screen.findByRole("textbox", { name: "Lap 3" });
    await user.type(editor, "c{Enter}");
    await waitFor(() => expect(lapRows(1)[2]).toContain("cut"));
    await waitFor(async () => expect(await entryField()).toHaveFocus());
  });
});

describe("the pad", () => {
  afterEach(() => useDevice.setState({ pad: "auto" }));

  it("stands on its first page again for the next lap, and has a space for sectors", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await padShown();
    const key = (name: string) => entry().getByRole("button", { name });
    await user.type(field, "24912");
    await user.click(key("more"));
    expect(key("space")).toBeVisible();
    await user.click(key("contact"));
    expect(field).toHaveValue("24912k");
    await user.click(key("Add"));
    await lap(4);
    expect(key("off")).toBeVisible();
    expect(entry().queryByRole("button", { name: "contact" })).not.toBeInTheDocument();
    await user.type(field, "27.1");
    await user.click(key("more"));
    await user.click(key("space"));
    await user.type(field, "32.9 24.8");
    await user.click(key("Add"));
    expect(await lap(5)).toHaveTextContent("1:24.8");
    await waitFor(() => expect(key("space")).toBeVisible());
    expect(key("off")).toBeVisible();
  });

  it("asks for its own key, not for one of a keyboard", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await padShown();
    await user.type(field, "1:20.000");
    await user.click(entry().getByRole("button", { name: "Add" }));
    expect(entry().getByRole("alert")).toHaveTextContent(/Press Add again to keep it\.$/);
    await pauseToRead();
    await user.click(entry().getByRole("button", { name: "Add" }));
    expect(await lap(4)).toHaveTextContent("1:20.000");
  });
});

describe("the pad between two runs", () => {
  afterEach(() => useDevice.setState({ pad: "auto" }));
  const key = (name: string) => entry().queryByRole("button", { name });

  it("stands open in the first run, and a key of its own closes it", async () => {
    const { user } = await renderLog((book) => openWith(book, []));
    const field = await entryField();
    await padShown();
    await user.click(key("hide the keys") as HTMLElement);
    expect(key("7")).not.toBeInTheDocument();
    await user.click(key("Keys") as HTMLElement);
    expect(key("7")).toBeVisible();
    expect(field).toHaveFocus();
  });

  it("begins folded in a run that follows another, until the entry line is tapped, and stays open then", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await padShown();
    await user.click(await screen.findByRole("button", { name: "End run" }));
    await waitFor(() => expect(screen.getByLabelText("Lap 1")).toBe(field));
    expect(key("7")).not.toBeInTheDocument();
    await user.click(field);
    for (const sign of "4912") await user.click(key(sign) as HTMLElement);
    await user.click(key("Add") as HTMLElement);
    await lap(1);
    expect(key("7")).toBeVisible();
  });

  it("does not rise when laps of the next run come from a keyboard", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await padShown();
    await user.click(await screen.findByRole("button", { name: "End run" }));
    await waitFor(() => expect(key("7")).not.toBeInTheDocument());
    act(() => field.focus());
    await user.keyboard("4912{Enter}");
    await waitFor(() => expect(screen.getByLabelText("Lap 2")).toBeVisible());
    expect(key("7")).not.toBeInTheDocument();
  });
});

describe("a lap that could not be stored", () => {
  let fault: ReturnType<typeof failingStore> | undefined;
  afterEach(() => fault?.mend());

  it("stays on the page with its text until it is tried again", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "4912");
    await draftsSettled("");
    // The first two storing calls keep the line as a draft; the third writes the run.
    fault = failingStore(3);
    await user.keyboard("{Enter}");
    const alert = await screen.findByText("Not stored: 4912.");
    expect(fault.fired()).toBe(true);
    expect(screen.getAllByRole("row")).toHaveLength(4);
    fault.mend();
    await user.type(field, "5");
    expect(screen.queryByRole("button", { name: "Put it back in the field" })).not.toBeInTheDocument();
    await user.clear(field);
    expect(screen.getByRole("button", { name: "Put it back in the field" })).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Try again" }));
    expect(await lap(4)).toHaveTextContent("1:24.912");
    await waitFor(() => expect(alert).not.toBeInTheDocument());
  });
});

describe("several lines pasted", () => {
  it("has those far from the usual pointed at, to be added as odd or left out", async () => {
    const { user } = await threeLaps();
    await entryField();
    await user.click(await entryField());
    await user.paste("1:24.951\n13:23.456\n200:00.0 f\n4866\n");
    const dialog = within(await screen.findByRole("dialog", { name: "4 laps, 2 to look at, 0 not read" }));
    const table = within(dialog.getByRole("table", { name: "To look at: 2 laps" }));
    expect(table.getByRole("row", { name: /^2 / })).toHaveTextContent(
      /more than 3 times this session's usual lap/,
    );
    expect(dialog.queryByText(/Enter again/)).not.toBeInTheDocument();
    expect(within(dialog.getByRole("table", { name: "Read as" })).getByText("1:24.866")).toBeVisible();
    await user.click(dialog.getByRole("button", { name: "Add 2 laps, without those to look at" }));
    expect(await lap(5)).toHaveTextContent("1:24.866");
    await waitFor(() => expect(lapRows(1)).toHaveLength(5));
  });

  it("are shown with what each was read as, and only then stored, all of them taken back by Undo", async () => {
    const { user } = await threeLaps();
    await user.click(await entryField());
    await user.paste("1:24.951\nnot a lap\n24866 c\n");
    const dialog = await screen.findByRole("dialog", { name: "2 laps, 1 not read" });
    expect(within(dialog).getByText("not a lap")).toBeVisible();
    expect(within(dialog).getByText("1:24.866")).toBeVisible();
    expect(screen.queryByRole("button", { name: /^Edit lap 4/ })).not.toBeInTheDocument();
    await user.click(within(dialog).getByRole("button", { name: "Add 2 laps" }));
    await lap(5);
    await user.click(screen.getByRole("button", { name: "Undo" }));
    await waitFor(() => expect(lapRows(1)).toHaveLength(3));
  });

  it("are announced with what the run says of them, and once more when they are pasted again", async () => {
    const { user } = await threeLaps();
    const block = Array.from({ length: 20 }, (_, at) => `1:25.${String(100 + at)}`).join("\n");
    const words = /^20 laps stored\. ./;
    for (const _ of ["pasted", "pasted again"]) {
      await user.click(await entryField());
      await user.paste(block);
      const add = await screen.findByRole("button", { name: "Add 20 laps" });
      expect(entry().queryByText(words)).not.toBeInTheDocument();
      await user.click(add);
      await lap(23);
      const said = await entry().findByText(words);
      expect(said.closest("[role=status]")).not.toBeNull();
      const finding = said.textContent.replace("20 laps stored. ", "");
      expect(
        within(screen.getByRole("region", { name: "What run 1 says" })).getByText(finding),
      ).toBeVisible();
      await user.click(screen.getByRole("button", { name: "Undo" }));
      await waitFor(() => expect(lapRows(1)).toHaveLength(3));
    }
  });

  it("wait where the driver decides later", async () => {
    const { user } = await threeLaps();
    await user.click(await entryField());
    await user.paste("1:24.951\n4866\n");
    await user.click(await screen.findByRole("button", { name: "Decide later" }));
    expect(screen.getByText("A pasted block is waiting.")).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Discard" }));
    expect(screen.queryByText("A pasted block is waiting.")).not.toBeInTheDocument();
    expect(lapRows(1)).toHaveLength(3);
  });
});
