import { act, fireEvent, screen, waitFor, within } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { useDevice } from "#state/device.ts";
import { entryField, lapRows, openWith, pauseToRead, renderLog } from "../../../support/logPage.tsx";
import { pass } from "../../../support/waits.ts";

const entry = () => within(screen.getByRole("region", { name: "Entry" }));
const threeLaps = () => renderLog((book) => openWith(book, [84_900, 84_700, 84_800]));
const lap = (number: number) => screen.findByRole("button", { name: new RegExp(`^Edit lap ${number}:`) });
const key = (name: string) => entry().getByRole("button", { name });
const back = (text: string) => entry().queryByRole("button", { name: `Put ${text} back into the field` });
const times = () => lapRows(1).map((cells) => cells[1]?.replace(/^Edit lap \d+: /, ""));

describe("a line that was refused or asked about", () => {
  it("is written over by three laps typed blind: all of them are stored, and it stays in view", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "912{Enter}");
    await user.keyboard("4912{Enter}5012{Enter}4866{Enter}");
    await lap(6);
    expect(times().slice(3)).toEqual(["1:24.912", "1:25.012", "1:24.866"]);
    expect(field).toHaveValue("");
    expect(back("912")).toBeVisible();
  });

  it("loses no line where one of the blind ones is refused as well, over a reload too", async () => {
    const { user, reload } = await threeLaps();
    await user.type(await entryField(), "912{Enter}");
    await user.keyboard("9912{Enter}5012{Enter}");
    await lap(4);
    reload();
    await entryField();
    await waitFor(() => expect(back("912")).toBeVisible());
    expect(back("9912")).toBeVisible();
  });

  it("comes back by Escape while it is written over, and by Escape in the empty field", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "912 / wide{Enter}");
    await user.keyboard("5{Escape}");
    expect(field).toHaveValue("912 / wide");
    expect(back("912 / wide")).not.toBeInTheDocument();
    await user.keyboard("{Enter}4912{Enter}");
    await lap(4);
    await user.keyboard("{Escape}");
    expect(field).toHaveValue("912 / wide");
  });

  it("comes back by a press, what was typed meanwhile stays one key away, or it is let go", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "912{Enter}");
    await user.keyboard("491");
    await user.click(back("912") as HTMLElement);
    expect(field).toHaveValue("912");
    expect(field).toHaveFocus();
    await user.clear(field);
    await user.keyboard("{Escape}");
    expect(field).toHaveValue("491");
    await user.keyboard("{Enter}5");
    await user.click(entry().getByRole("button", { name: "Let 491 go" }));
    expect(back("491")).not.toBeInTheDocument();
    expect(field).toHaveValue("5");
  });

  it("is written over where it was asked about, too, and a second Enter still stores it", async () => {
    const { user } = await threeLaps();
    const field = (await entryField()) as HTMLInputElement;
    await user.type(field, "1:20.000{Enter}");
    expect([field.selectionStart, field.selectionEnd]).toEqual([0, 8]);
    await user.keyboard("4912{Enter}");
    expect(await lap(4)).toHaveTextContent("1:24.912");
    await user.click(back("1:20.000") as HTMLElement);
    await user.keyboard("{Enter}");
    await pauseToRead();
    await user.keyboard("{Enter}");
    expect(await lap(5)).toHaveTextContent("1:20.000");
  });

  it("is mended where the driver goes into it: nothing is put aside then", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "912{Enter}");
    await user.keyboard("{Home}4{Enter}");
    expect(await lap(4)).toHaveTextContent("1:24.912");
    expect(entry().queryByText("Not stored")).not.toBeInTheDocument();
  });
});

describe("a lap with a spin in four digits", () => {
  it("is one of the readings shown, chosen with the arrows, and stored where Enter had asked", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "4912 s");
    const choices = within(entry().getByRole("group", { name: "Which was it?" }));
    expect(choices.getAllByRole("button").map(({ textContent }) => textContent)).toEqual([
      "1:24.912",
      "1:34.912",
      "1:44.912",
    ]);
    await user.keyboard("{Enter}{ArrowDown}{ArrowRight}{Enter}");
    expect(await lap(4)).toHaveTextContent("1:34.912");
    expect(lapRows(1)[3]?.at(-1)).toBe("spin");
    expect(field).toHaveFocus();
  });

  it("only stands in the field where it is chosen before Enter, for a corner may follow", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "4912 s");
    await user.click(key("1:44.912"));
    expect(field).toHaveValue("1:44.912s");
    await user.keyboard("5{Enter}");
    expect(await lap(4)).toHaveTextContent("1:44.912");
    expect(lapRows(1)[3]?.at(-1)).toBe("spin, corner 5");
  });

  it("leaves the choices by the arrow up or Escape, and a digit begins a new line", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "4912 s{Enter}{ArrowDown}");
    expect(key("1:24.912")).toHaveFocus();
    await user.keyboard("{ArrowUp}");
    expect(field).toHaveFocus();
    await user.keyboard("{ArrowDown}7");
    expect(field).toHaveFocus();
    expect(field).toHaveValue("7");
    expect(back("4912 s")).toBeVisible();
  });
});

/** The field of the entry line, once it has the focus that the page gives it. */
const focusedField = async () => {
  const field = await entryField();
  await waitFor(() => expect(field).toHaveFocus());
  return field;
};

describe("digits typed elsewhere on Log", () => {
  afterEach(() => useDevice.setState({ digits: "caught" }));

  it("go to the entry line from nothing, a button and a link, and take the focus along", async () => {
    const { user } = await threeLaps();
    const field = await focusedField();
    act(() => field.blur());
    await user.keyboard("4");
    expect(field).toHaveFocus();
    await waitFor(() => expect(field).toHaveValue("4"));
    await user.keyboard("912{Enter}");
    expect(await lap(4)).toHaveTextContent("1:24.912");
    const button = screen.getByRole("button", { name: "End run" });
    act(() => button.focus());
    await user.keyboard("{Shift}");
    expect(button).toHaveFocus();
    await user.keyboard("5");
    await waitFor(() => expect(field).toHaveValue("5"));
    await user.keyboard("012{Enter}");
    expect(await lap(5)).toHaveTextContent("1:25.012");
  });

  it("are never taken from a field, from a dialog, or with a modifier", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.click(await lap(2));
    const editor = await screen.findByRole("textbox", { name: "Lap 2" });
    await user.type(editor, "5");
    await user.keyboard("{Escape}");
    act(() => (document.activeElement as HTMLElement).blur());
    fireEvent.keyDown(document.body, { key: "5", ctrlKey: true });
    await user.click(screen.getByRole("button", { name: "Summary run" }));
    await screen.findByRole("dialog");
    act(() => (document.activeElement as HTMLElement).blur());
    await user.keyboard("5");
    expect(field).toHaveValue("");
  });

  it("are let be where the device is set so", async () => {
    const { user } = await threeLaps();
    const field = await focusedField();
    act(() => useDevice.setState({ digits: "left" }));
    act(() => field.blur());
    await user.keyboard("4");
    expect(field).toHaveValue("");
    expect(field).not.toHaveFocus();
  });
});

describe("how well a time is known", () => {
  it("is said in tenths, and a sum of sectors shows all of itself", async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    await user.type(field, "1:24.9");
    expect(entry().getByText("lap 4 · 0.2 s off PB · in tenths")).toBeVisible();
    await user.clear(field);
    await user.type(field, "27.1 33.42 24.95");
    expect(entry().getByText("1:25.47")).toBeVisible();
    expect(entry().getByText(/in tenths/)).toBeVisible();
    await user.keyboard("{Enter}");
    await lap(4);
    expect(lapRows(1)[3]?.at(-1)).toBe("counted as 1:25.47 · in tenths");
  });
});

describe("the pad", () => {
  afterEach(() => useDevice.setState({ pad: "auto" }));
  const withPad = async () => {
    const { user } = await threeLaps();
    const field = await entryField();
    act(() => useDevice.setState({ pad: "shown" }));
    const press = async (...names: readonly string[]) => {
      for (const name of names)
        await user.click(await entry().findByRole("button", { name, exact: true } as object));
    };
    return { user, field, press };
  };

  it("begins a new line with the digit after a refused one, and keeps the old one in view", async () => {
    const { field, press } = await withPad();
    await press("9", "1", "2", "Add", "4", "9", "1", "2");
    expect(field).toHaveValue("4912");
    expect(back("912")).toBeVisible();
    await press("Add");
    expect(await lap(4)).toHaveTextContent("1:24.912");
  });

  it("mends a refused line with its other keys", async () => {
    const { field, press } = await withPad();
    await press("4", "9", "1", "2", "spin", "Add", "backspace");
    expect(field).toHaveValue("4912");
    expect(entry().queryByText("Not stored")).not.toBeInTheDocument();
  });

  it("clears the line by a key and by holding backspace, and brings it back", async () => {
    const { user, field, press } = await withPad();
    await press("4", "9", "clear");
    expect(field).toHaveValue("");
    await press("bring back");
    expect(field).toHaveValue("49");
    await user.pointer({ keys: "[MouseLeft>]", target: key("backspace") });
    await act(() => pass(700));
    await user.pointer({ keys: "[/MouseLeft]", target: key("backspace") });
    expect(field).toHaveValue("");
    await press("bring back", "backspace");
    expect(field).toHaveValue("4");
  });

  it("has a key for a space where the layout has sectors, and the note behind more", async () => {
    const { press } = await withPad();
    expect(entry().queryByRole("button", { name: "space" })).not.toBeInTheDocument();
    await press("more");
    expect(key("space")).toBeVisible();
    expect(key("contact")).toBeVisible();
    expect(key("more")).toHaveAttribute("aria-expanded", "true");
  });
});
