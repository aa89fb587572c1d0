import { fireEvent, screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import {
  addCombo,
  addCornerReview,
  addLap,
  combosWithNames,
  editLayout,
  type Logbook,
  type ReadOnlyLogbook,
  startSession,
} from "#db";
import type { Corner, CornerReview, Layout } from "#domain";
import { useRows } from "#live";
import { useDevice } from "#state/device.ts";
import { CornersScreen } from "../../../../src/screens/corners/CornersScreen.tsx";
import { aLap } from "../../../support/aLap.ts";
import { pick } from "../../../support/pick.ts";
import { renderAt } from "../../../support/renderAt.tsx";

let layout: Layout | undefined;
let reviews: readonly CornerReview[] = [];
const allReviews = async (book: ReadOnlyLogbook) =>
  (await book.tables.cornerReviews.toArray()).filter(({ deletedAt }) => deletedAt === undefined);
/** The screen, and what lies behind it in the logbook. */
function Peek() {
  layout = useRows(combosWithNames, [])?.[0]?.layout;
  reviews = useRows(allReviews, []) ?? [];
  return <CornersScreen />;
}

const known: readonly Corner[] = [
  { number: 1, bend: "slow", after: "short" },
  { number: 2, name: "Church", direction: "left", radius: 30, afterLength: 200 },
  { number: 3, bend: "fast", after: "none" },
];
/** A logbook with one combo, at the address of its review. */
const aCombo =
  (
    corners: readonly Corner[] = known,
    more: (book: Logbook, comboId: string) => Promise<unknown> = async () => {},
  ) =>
  async (book: Logbook) => {
    const { comboId } = await addCombo(book, {
      car: { name: "Club hatch" },
      track: { name: "Varnholt Ring" },
    });
    const found = (await combosWithNames(book))[0]?.layout;
    if (found === undefined) throw new Error("no layout");
    await editLayout(book, { layoutId: found.id, patch: { corners } });
    await more(book, comboId);
    window.location.hash = `#/corners/${comboId}?part=review`;
  };
const line = () => screen.findByRole("textbox", { name: "Left at entry, apex and exit" });
const at = (number: string) => screen.findByRole("form", { name: new RegExp(`^Corner ${number}\\b`) });
const slider = (name: string) => screen.getByRole("slider", { name });
/** One finger on an element, at a point of the page. */
const finger = (
  element: HTMLElement,
  event: "pointerDown" | "pointerMove" | "pointerUp" | "pointerCancel",
  [clientX, clientY]: readonly [number, number],
) => fireEvent[event](element, { pointerId: 1, pointerType: "touch", isPrimary: true, clientX, clientY });
const step = async (user: Awaited<ReturnType<typeof renderAt>>["user"], text: string) =>
  user.type(await line(), `${text}{Enter}`);

describe("a replay review by keyboard", () => {
  it("goes from corner to corner, says what each line becomes, and stores all in one write that is taken back as one", async () => {
    const { user } = await renderAt("", <Peek />, aCombo());
    expect(await at("1")).toHaveTextContent("1 of 3");
    expect(screen.getByText(/^Look at the replay from outside the car/)).toBeVisible();
    const field = await line();
    expect(field).toHaveFocus();
    expect(field).toHaveAccessibleDescription("Nothing noted: Enter skips this corner");
    await user.type(field, "h . -0.2m bl / too soon");
    expect(field).toHaveAccessibleDescription(
      "half a car left at entry (0.9 m), nothing left at the apex, 0.1 of a car over the edge at exit (0.2 m) · braking late · too soon",
    );
    await user.keyboard("{Enter}");
    expect(await at("2 Church")).toHaveTextContent("2 of 3");
    expect(screen.getByText(/^Corner 1: half a car left at entry/)).toBeVisible();
    expect(screen.queryByText(/^Look at the replay/)).toBeNull();
    expect(await line()).toHaveFocus();
    await user.keyboard("{Enter}");
    await at("3");
    expect(screen.getByText("Corner 2: skipped")).toBeVisible();
    await step(user, "? 0.3");
    const table = await screen.findByRole("table", { name: "What the replay showed" });
    expect(within(table).getByRole("row", { name: /Church/ })).toHaveTextContent("skipped");
    await waitFor(() => expect(screen.getByRole("button", { name: "Store this review" })).toHaveFocus());
    expect(reviews).toEqual([]);
    await user.keyboard("{Enter}");
    await waitFor(() => expect(reviews).toHaveLength(1));
    expect(reviews[0]?.corners).toEqual([
      { number: 1, entry: 0.9, apex: 0, exit: -0.2, braking: "late", note: "too soon" },
      { number: 3, apex: 0.54 },
    ]);
    expect(reviews[0]?.on).toBe("2026-11-25");
    expect(window.location.hash).not.toContain("part=review");
    await waitFor(() => expect(screen.getByRole("heading", { name: /^Corner \d first/ })).toHaveFocus());
    await user.click(await screen.findByRole("button", { name: "Undo" }));
    await waitFor(() => expect(reviews).toEqual([]));
  });

  it("refuses a line it cannot read and selects what is wrong, while the corners before and after stay in reach", async () => {
    const { user } = await renderAt("", <Peek />, aCombo());
    const field = (await line()) as HTMLInputElement;
    await user.type(field, "h late{Enter}");
    expect(field).toHaveAccessibleDescription(/^“late” is not understood\. The words are: be braking early/);
    expect(field).toBeInvalid();
    expect([field.selectionStart, field.selectionEnd]).toEqual([2, 6]);
    expect(slider("Road left at entry")).toBeDisabled();
    expect(screen.getByRole("button", { name: "off line" })).toBeDisabled();
    await user.keyboard("{ArrowDown}");
    await at("2");
    expect(screen.getByText("Corner 1: not understood")).toBeVisible();
    await user.keyboard("{ArrowUp}");
    await at("1");
    expect(await line()).toHaveValue("h late");
    await user.keyboard("{Escape}");
    expect(await line()).toHaveValue("");
    await user.click(screen.getByRole("button", { name: "Put back h late" }));
    expect(await line()).toHaveValue("h late");
    expect(await line()).toHaveFocus();
    await user.keyboard("{Escape}{Escape}");
    expect(await line()).toHaveValue("h late");
    await user.keyboard("{Escape}{Control>}z{/Control}");
    expect(await line()).toHaveValue("h late");
    await user.keyboard("{Escape}h l{ArrowDown}{ArrowDown}{ArrowDown}");
    await user.click(await screen.findByRole("button", { name: "Store this review" }));
    expect(screen.getByText(/^Corner 1: “l” is not understood/)).toBeVisible();
    expect(reviews).toEqual([]);
    await user.click(screen.getByRole("button", { name: "Change corner 1" }));
    expect(await line()).toHaveValue("h l");
  });

  it("loses nothing by a reload, and says so where nothing was noted", async () => {
    const { user, reload } = await renderAt("", <Peek />, aCombo());
    await step(user, "h 0.2");
    await user.type(await line(), "1 . be");
    reload();
    await at("2");
    expect(await line()).toHaveValue("1 . be");
    expect(
      screen.getByText(
        "Corner 1: half a car left at entry (0.9 m), 0.2 of a car left at the apex (0.36 m), exit not seen",
      ),
    ).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Back" }));
    expect(await line()).toHaveValue("h 0.2");
    await user.clear(await line());
    await user.keyboard("{ArrowDown}");
    await at("2");
    await user.clear(await line());
    await user.keyboard("{Enter}");
    await at("3");
    await user.keyboard("{Enter}");
    await user.click(await screen.findByRole("button", { name: "Store this review" }));
    expect(await screen.findByText(/^Nothing was noted at any corner/)).toBeVisible();
    expect(reviews).toEqual([]);
  });
});

describe("the drawn road", () => {
  it("and the line are one text: what is moved is written, what is typed moves the car", async () => {
    const { user } = await renderAt("", <Peek />, aCombo());
    const field = await line();
    const entry = slider("Road left at entry");
    expect(entry).toHaveAttribute("aria-valuetext", "not looked at");
    fireEvent.change(entry, { target: { value: "2" } });
    expect(field).toHaveValue("h");
    expect(entry).toHaveAttribute("aria-valuetext", "half a car left at entry (0.9 m)");
    fireEvent.change(slider("Road left at exit"), { target: { value: "-1" } });
    expect(field).toHaveValue("h ? -0.25");
    await user.click(screen.getByRole("button", { name: "Clear entry" }));
    expect(field).toHaveValue("? ? -0.25");
    expect(entry).toHaveFocus();
    await user.clear(field);
    await user.type(field, "0.3 . 1.5");
    expect(slider("Road left at entry")).toHaveValue("1");
    expect(slider("Road left at the apex")).toHaveAttribute("aria-valuetext", "nothing left at the apex");
    expect(slider("Road left at exit")).toHaveValue("6");
  });

  it("is told what it shows by a touch where it stands already", async () => {
    await renderAt("", <Peek />, aCombo());
    const field = await line();
    const apex = slider("Road left at the apex") as HTMLInputElement;
    finger(apex, "pointerDown", [5, 5]);
    expect(field).toHaveValue("");
    finger(apex, "pointerUp", [5, 5]);
    expect(field).toHaveValue(`? ${Number(apex.value) / 4}`);
  });

  it("changes nothing under a finger that scrolls, and gives back what it took where the browser scrolls after all", async () => {
    await renderAt("", <Peek />, aCombo());
    const field = await line();
    const entry = slider("Road left at entry");
    finger(entry, "pointerDown", [5, 5]);
    for (const y of [9, 20, 60, 200]) finger(entry, "pointerMove", [9, y]);
    finger(entry, "pointerMove", [400, 200]);
    finger(entry, "pointerUp", [400, 200]);
    expect(field).toHaveValue("");
    Object.assign(Element.prototype, { setPointerCapture: () => {} });
    finger(entry, "pointerDown", [5, 5]);
    finger(entry, "pointerMove", [30, 10]);
    expect(field).not.toHaveValue("");
    finger(entry, "pointerCancel", [30, 10]);
    expect(field).toHaveValue("");
  });

  it("has room for no more than the road less the car, typed or moved", async () => {
    const { user } = await renderAt(
      "",
      <Peek />,
      aCombo([
        { number: 1, width: 10 },
        { number: 2, width: 10 },
      ]),
    );
    const field = await line();
    await user.type(field, "50m 50m 50m");
    expect(field).toHaveAccessibleDescription(
      "Entry: 50m is more than the road leaves, which is 10 m wide there, with a car of 1.8 m. Write at most 4.55 car widths.",
    );
    await user.keyboard("{Enter}");
    expect(await at("1")).toBeVisible();
    await user.keyboard("{ArrowDown}");
    await step(user, "h");
    await user.click(await screen.findByRole("button", { name: "Store this review" }));
    expect(screen.getByText(/^Corner 1: Entry: 50m is more than the road leaves/)).toBeVisible();
    expect(reviews).toEqual([]);
  });

  it("has words beside it that are pressed, and pressed again let go", async () => {
    const { user } = await renderAt("", <Peek />, aCombo());
    const field = await line();
    const press = (group: string, word: string) =>
      user.click(within(screen.getByRole("group", { name: group })).getByRole("button", { name: word }));
    await user.type(field, "h / wide");
    await press("Braking", "early");
    await press("Throttle", "twice");
    await press("Line", "off line");
    expect(field).toHaveValue("h be tt o / wide");
    await press("Braking", "late");
    await press("Throttle", "twice");
    expect(field).toHaveValue("h bl o / wide");
  });
});

describe("a layout of which nothing is known", () => {
  it("is reviewed by numbers and kinds alone, which it learns with the same write", async () => {
    const { user } = await renderAt("", <Peek />, aCombo([]));
    const numbers = await screen.findByRole("textbox", { name: "Corners to look at" });
    await waitFor(() => expect(numbers).toHaveFocus());
    await user.type(numbers, "three{Enter}");
    expect(numbers).toHaveAccessibleDescription(/“three” is not the number of a corner/);
    await user.clear(numbers);
    await user.type(numbers, "9 3 5");
    await user.type(screen.getByRole("textbox", { name: "Corners of a lap" }), "8{Enter}");
    expect(screen.getByText(/Corner 9 is beyond the 8 of a lap/)).toBeVisible();
    await user.type(screen.getByRole("textbox", { name: "Corners of a lap" }), "{Backspace}10{Enter}");
    expect(await at("3")).toHaveTextContent("1 of 3");
    await user.type(await line(), "h");
    await user.click(screen.getByRole("radio", { name: "hairpin" }));
    await user.click(screen.getByRole("radio", { name: "long straight" }));
    expect(layout?.corners).toEqual([]);
    await user.click(screen.getByRole("button", { name: "Next corner" }));
    await at("5");
    await user.click(screen.getByRole("radio", { name: "kink" }));
    await user.click(screen.getByRole("button", { name: "Next corner" }));
    await at("9");
    await user.click(screen.getByRole("button", { name: "Skip corner 9" }));
    const table = await screen.findByRole("table", { name: "What the replay showed" });
    expect(within(table).getByRole("row", { name: /3/ })).toHaveTextContent("hairpin, then a long straight");
    await user.click(screen.getByRole("button", { name: "Store this review" }));
    await waitFor(() => expect(reviews).toHaveLength(1));
    await waitFor(() => expect(layout?.corners).toHaveLength(10));
    expect(layout?.corners.filter(({ number }) => [3, 4, 5].includes(number))).toEqual([
      { number: 3, bend: "hairpin", after: "long" },
      { number: 4 },
      { number: 5, bend: "kink" },
    ]);
    await user.click(await screen.findByRole("button", { name: "Undo" }));
    await waitFor(() => expect(layout?.corners).toEqual([]));
  });

  it("is asked for its corners with those named in remarks standing ready, to be taken with Enter", async () => {
    const { user } = await renderAt(
      "",
      <Peek />,
      aCombo([], async (book, comboId) => {
        const { runId } = await startSession(book, { comboId, date: "2026-11-24", zone: "Europe/Berlin" });
        for (let lap = 0; lap < 9; lap += 1)
          await addLap(book, { runId, id: book.newId(), lap: aLap(83_000) });
        const off = aLap(84_000, { remarks: [{ kind: "off", corner: 5 }] });
        await addLap(book, { runId, id: book.newId(), lap: off });
      }),
    );
    const numbers = await screen.findByRole("textbox", { name: "Corners to look at" });
    await waitFor(() => expect(numbers).toHaveFocus());
    expect(numbers).toHaveValue("5");
    await user.keyboard("{Enter}");
    expect(await at("5")).toHaveTextContent("1 of 1");
  });

  it("asks nothing of a corner whose radius and straight are known", async () => {
    const { user } = await renderAt(
      "",
      <Peek />,
      aCombo([
        { number: 1, radius: 30 },
        { number: 2, afterLength: 90 },
      ]),
    );
    await at("1");
    expect(screen.queryByRole("group", { name: "Kind of bend" })).toBeNull();
    expect(screen.getByRole("group", { name: "After it" })).toBeVisible();
    await user.keyboard("{ArrowDown}");
    await at("2");
    expect(screen.getByRole("group", { name: "Kind of bend" })).toBeVisible();
    expect(screen.queryByRole("group", { name: "After it" })).toBeNull();
  });
});

describe("what a review is of", () => {
  const driven = async (book: Logbook, comboId: string) => {
    const { runId } = await startSession(book, { comboId, date: "2026-11-24", zone: "Europe/Berlin" });
    for (const ms of [84_000, 83_456]) await addLap(book, { runId, id: book.newId(), lap: aLap(ms) });
  };
  const setUp = async (user: Awaited<ReturnType<typeof renderAt>>["user"]) =>
    user.click(await screen.findByRole("button", { name: /^Lap, corners, unit/ }));

  it("the corners chosen for tonight stand ready, and others are chosen in the row, for the next review as well", async () => {
    const { user, reload } = await renderAt(
      "",
      <Peek />,
      aCombo(known, async (_, comboId) => {
        useDevice.getState().change({ cornersTonight: { comboId, day: "2026-11-25", numbers: [2, 3] } });
      }),
    );
    expect(await at("2")).toHaveTextContent("1 of 2");
    await setUp(user);
    await user.click(screen.getByRole("button", { name: "corner 1" }));
    await user.click(screen.getByRole("button", { name: "corner 3" }));
    expect(await at("1")).toHaveTextContent("1 of 2");
    expect(useDevice.getState().cornersTonight?.numbers).toEqual([1, 2]);
    reload();
    expect(await at("1")).toHaveTextContent("1 of 2");
  });

  it("a lap of the last session dates the review by that session", async () => {
    const { user } = await renderAt("", <Peek />, aCombo(known, driven));
    await setUp(user);
    const laps = screen.getByRole("combobox", { name: "Lap looked at" });
    expect(
      within(laps)
        .getAllByRole("option")
        .map(({ textContent }) => textContent),
    ).toEqual(["the usual lap", "run 1, lap 2: 1:23.456", "run 1, lap 1: 1:24.000"]);
    pick(laps, "run 1, lap 2: 1:23.456");
    await step(user, "h");
    await user.keyboard("{Enter}");
    await at("3");
    await user.keyboard("{Enter}");
    await user.click(await screen.findByRole("button", { name: "Store this review" }));
    await waitFor(() => expect(reviews).toHaveLength(1));
    expect(reviews[0]).toMatchObject({
      on: "2026-11-24",
      sessionId: expect.any(String),
      lapId: expect.any(String),
    });
  });

  it("lines typed in car widths mean the same in metres", async () => {
    const { user } = await renderAt("", <Peek />, aCombo());
    await user.type(await line(), "h 0.25 1");
    await setUp(user);
    expect(screen.getByRole("group", { name: "Gaps are typed in" })).toHaveAccessibleDescription(
      "A car’s width is 1.8 m, which is assumed: nothing is known of this car’s.",
    );
    await user.click(screen.getByRole("radio", { name: "metres" }));
    expect(await line()).toHaveValue("h 0.45 1.8");
    expect(await line()).toHaveAccessibleDescription(/^0\.9 m left at entry \(half a car\)/);
    expect(useDevice.getState().gapUnit).toBe("metres");
  });
});

describe("reviews that are there", () => {
  const reviewed = async (book: Logbook, comboId: string) => {
    await addCornerReview(book, {
      comboId,
      on: "2026-10-01",
      corners: [
        { number: 1, exit: 1 },
        { number: 2, entry: 0.9, note: "late" },
      ],
    });
    await addCornerReview(book, { comboId, on: "2026-11-01", corners: [{ number: 3, apex: 0 }] });
  };
  const openOld = async (user: Awaited<ReturnType<typeof renderAt>>["user"]) => {
    await user.click(await screen.findByRole("button", { name: /^Reviews kept/ }));
    const table = screen.getByRole("table", { name: "Reviews kept, the newest first" });
    expect(within(table).getAllByRole("row")[1]).toHaveTextContent("Sun 1 Nov 20263the usual lap");
    await user.click(within(table).getByRole("link", { name: "Thu 1 Oct 2026" }));
  };

  it("open with the table of their corners; what is changed is stored, the rest stays to the last digit", async () => {
    const { user } = await renderAt("", <Peek />, aCombo(known, reviewed));
    await openOld(user);
    await user.click(await screen.findByRole("button", { name: "Change corner 2 Church" }));
    const field = await line();
    expect(field).toHaveValue("h / late");
    await user.clear(field);
    await user.type(field, ". bl");
    expect(screen.getByRole("button", { name: "To the table" })).toBeVisible();
    await user.keyboard("{Enter}");
    await user.click(await screen.findByRole("button", { name: "Store this review" }));
    await waitFor(() =>
      expect(reviews[0]?.corners).toEqual([
        { number: 1, exit: 1 },
        { number: 2, entry: 0, braking: "late" },
      ]),
    );
    expect(reviews[0]?.on).toBe("2026-10-01");
    await user.click(await screen.findByRole("button", { name: "Undo" }));
    await waitFor(() => expect(reviews[0]?.corners[1]).toEqual({ number: 2, entry: 0.9, note: "late" }));
  });

  it("are deleted, and come back", async () => {
    const { user } = await renderAt("", <Peek />, aCombo(known, reviewed));
    await openOld(user);
    await user.click(await screen.findByRole("button", { name: "Delete this review" }));
    await waitFor(() => expect(reviews).toHaveLength(1));
    expect(await at("1")).toBeVisible();
    await user.click(await screen.findByRole("button", { name: "Undo" }));
    await waitFor(() => expect(reviews).toHaveLength(2));
  });

  it("one that is gone is said to be, and a new one begins", async () => {
    await renderAt("", <Peek />, async (book) => {
      await aCombo()(book);
      window.location.hash += `&of=${crypto.randomUUID()}`;
    });
    expect(await screen.findByText(/^The review this address names is not in the logbook/)).toBeVisible();
    expect(await at("1")).toBeVisible();
  });
});
