import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, deleteSession, type Logbook, openLogbook, sessionsInDoubt, startSession } from "#db";
import { printAddress } from "#state/address.ts";
import { useDevice } from "#state/device.ts";
import { addSessions } from "../../../support/addSessions.ts";
import { aCombo, entryField, lapRows, openWith, renderLog } from "../../../support/logPage.tsx";
import { pick } from "../../../support/pick.ts";

type User = Awaited<ReturnType<typeof renderLog>>["user"];
const undo = () => screen.getByRole("button", { name: "Undo" });
const title = (name: string) => screen.findByRole("heading", { level: 1, name });

async function sessionDialog(user: User) {
  await user.click(await screen.findByRole("button", { name: "Session" }));
  return within(await screen.findByRole("dialog", { name: "This session" }));
}

async function twoCombos(book: Logbook) {
  const comboId = await aCombo(book);
  await addCombo(book, { car: { name: "endurance trainer" }, track: { name: "Tessemoor" } });
  await openWith(book, [84_700], comboId);
}

/** A clock that can be right, so that dates ahead of it are asked about. */
const aWeekLater = Date.UTC(2026, 11, 2, 18);

describe("the session's own fields", () => {
  it("are stored as they are left, and stand in the head", async () => {
    const { user, reload } = await renderLog(twoCombos);
    const dialog = await sessionDialog(user);
    pick(dialog.getByLabelText("Focus"), "kerbs");
    await user.type(dialog.getByLabelText("Target of the day"), "1:24.000");
    await user.type(dialog.getByLabelText("Conditions"), "cold track");
    await user.type(dialog.getByLabelText("Note to yourself"), "later at 5");
    await user.click(dialog.getByRole("button", { name: "Done" }));
    const about = await screen.findByText(/focus: kerbs · target of the day 1:24\.000 · cold track/);
    expect(about).toBeVisible();
    reload();
    const again = await sessionDialog(user);
    expect(again.getByLabelText("Note to yourself")).toHaveValue("later at 5");
  });

  it("keep a target of the day that is no lap time, and say so, over closing the dialog and a reload", async () => {
    const { user, reload } = await renderLog(twoCombos);
    const dialog = await sessionDialog(user);
    await user.type(dialog.getByLabelText("Target of the day"), "1:22 or less");
    await user.click(dialog.getByRole("button", { name: "Done" }));
    const field = (await sessionDialog(user)).getByLabelText("Target of the day");
    await waitFor(() => expect(field).toHaveValue("1:22 or less"));
    expect(field).toBeInvalid();
    reload();
    const again = (await sessionDialog(user)).getByLabelText("Target of the day");
    await waitFor(() => expect(again).toHaveValue("1:22 or less"));
    await user.clear(again);
    await user.type(again, "1:22");
    await user.tab();
    expect(await screen.findByText(/target of the day 1:22\.000/)).toBeInTheDocument();
  });

  it("take another date, with Undo; one after tomorrow only when it is meant", async () => {
    const { user } = await renderLog(twoCombos, "#/log", aWeekLater);
    const dialog = await sessionDialog(user);
    const date = dialog.getByLabelText("Date");
    await user.clear(date);
    await user.type(date, "2026-11-26");
    expect(dialog.queryByText(/after tomorrow/)).toBeNull();
    await user.clear(date);
    await user.type(date, "2036-03-04");
    await user.tab();
    expect(dialog.getByText(/is dated Tue 4 Mar 2036, after tomorrow. Is the date right/)).toBeVisible();
    expect(screen.getByText(/^Wednesday 25 November/)).toBeInTheDocument();
    await user.click(dialog.getByRole("button", { name: "Change it all the same" }));
    expect(await screen.findByText(/^Tuesday 4 March/)).toBeInTheDocument();
    await user.clear(date);
    await user.type(date, "2026-11-20");
    await user.click(dialog.getByRole("button", { name: "Done" }));
    expect(await screen.findByText(/^Friday 20 November/)).toBeVisible();
    await user.click(undo());
    expect(await screen.findByText(/^Tuesday 4 March/)).toBeVisible();
  });

  it("are asked about where the date lies after tomorrow, with the change at hand", async () => {
    const { user } = await renderLog(
      async (book) => {
        const { comboId } = await openWith(book, [84_700]);
        await startSession(book, {
          comboId,
          date: "2036-03-04",
          zone: "Europe/Berlin",
          startedAt: Date.UTC(2036, 2, 4, 18),
          endedAt: Date.UTC(2036, 2, 4, 19),
        });
        const [ahead] = await sessionsInDoubt(book, "2026-12-02");
        window.location.hash = printAddress({ place: "log", sessionId: ahead?.id ?? "" });
      },
      "#/log",
      aWeekLater,
    );
    expect(
      await screen.findByText(/is dated Tue 4 Mar 2036, after tomorrow. Is the date right/),
    ).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Change date" }));
    const dialog = within(await screen.findByRole("dialog"));
    const date = dialog.getByLabelText("Date");
    await user.clear(date);
    await user.type(date, "2026-11-24");
    await user.click(dialog.getByRole("button", { name: "Done" }));
    expect(await screen.findByText(/^Tuesday 24 November/)).toBeVisible();
    await waitFor(() => expect(screen.queryByText(/after tomorrow/)).toBeNull());
  });
});

describe("putting a session right", () => {
  it("moves it to a combo driven lately at one press, and back by Undo", async () => {
    const { user } = await renderLog(twoCombos);
    const dialog = await sessionDialog(user);
    await user.click(dialog.getByRole("button", { name: /^Wrong combo/ }));
    await user.click(await dialog.findByRole("button", { name: "Tessemoor · endurance trainer" }));
    expect(await title("Tessemoor · endurance trainer")).toBeVisible();
    await user.click(undo());
    expect(await title("Varnholt Ring · Club hatch")).toBeVisible();
  });

  it("moves it to a combo that is new, laps and all, and Undo takes the new names away", async () => {
    const { user } = await renderLog(twoCombos);
    const dialog = await sessionDialog(user);
    await user.click(dialog.getByRole("button", { name: /^Wrong combo/ }));
    const car = await dialog.findByRole("combobox", { name: "Car" });
    await user.click(car);
    await user.keyboard("Kart");
    expect(dialog.getByRole("option", { name: "New car “Kart”" })).toBeVisible();
    await user.click(dialog.getByRole("combobox", { name: "Track layout" }));
    await user.keyboard("Sand Hollow, long");
    await user.click(dialog.getByRole("button", { name: "Move the session" }));
    expect(await title("Sand Hollow, long · Kart")).toBeVisible();
    expect(lapRows(1)).toHaveLength(1);
    await user.click(undo());
    expect(await title("Varnholt Ring · Club hatch")).toBeVisible();
    const again = await sessionDialog(user);
    await user.click(again.getByRole("button", { name: /^Wrong combo/ }));
    await user.click(await again.findByRole("combobox", { name: "Car" }));
    expect(again.getAllByRole("option").map(({ textContent }) => textContent)).not.toContain("Kart");
  });

  it("says that a session is with its combo already, where neither name was changed", async () => {
    const { user } = await renderLog(twoCombos);
    const dialog = await sessionDialog(user);
    await user.click(dialog.getByRole("button", { name: /^Wrong combo/ }));
    await user.click(await dialog.findByRole("button", { name: "Move the session" }));
    expect(dialog.getByRole("combobox", { name: "Car" })).toHaveAccessibleDescription(
      /It is with Varnholt Ring · Club hatch already\. Change the car, the track, or both/,
    );
  });

  it("turns a new page: the PB starts afresh", async () => {
    const { user } = await renderLog(async (book) => {
      const comboId = await aCombo(book);
      await addSessions(book, comboId, [{ date: "2026-11-10", laps: [84_000] }]);
      await openWith(book, [84_700], comboId);
    });
    await entryField();
    expect(lapRows(1)[0]).toContain("+0.700");
    const dialog = await sessionDialog(user);
    await user.click(dialog.getByRole("button", { name: /^Layout or physics changed/ }));
    await user.type(dialog.getByLabelText("What changed"), "new tyre model");
    await user.click(dialog.getByRole("button", { name: "Turn a new page" }));
    await waitFor(() => expect(lapRows(1)[0]?.at(-1)).toBe("PB"));
    expect(lapRows(1)[0]).not.toContain("+0.700");
  });

  it("makes one car of two names, and two again by Undo", async () => {
    const { user } = await renderLog(async (book) => {
      await addCombo(book, { car: { name: "Club hatchback" }, track: { name: "Tessemoor" } });
      await openWith(book, [84_700]);
    });
    const dialog = await sessionDialog(user);
    await user.click(dialog.getByRole("button", { name: /^Same car or track twice/ }));
    const list = await dialog.findByLabelText("The car “Club hatch” is the same as");
    pick(list, await dialog.findByRole("option", { name: "Club hatchback" }));
    await user.click(dialog.getByRole("button", { name: "Make one car" }));
    expect(await title("Varnholt Ring · Club hatchback")).toBeVisible();
    await user.click(undo());
    expect(await title("Varnholt Ring · Club hatch")).toBeVisible();
  });

  it("makes one combo of two, with the sessions of both", async () => {
    const { user } = await renderLog(twoCombos);
    const dialog = await sessionDialog(user);
    await user.click(dialog.getByRole("button", { name: /^Same car or track twice/ }));
    const list = await dialog.findByLabelText("This combo is the same as");
    pick(list, await dialog.findByRole("option", { name: "Tessemoor · endurance trainer" }));
    await user.click(dialog.getByRole("button", { name: "Make one combo" }));
    expect(await title("Tessemoor · endurance trainer")).toBeVisible();
    expect(lapRows(1)).toHaveLength(1);
  });

  it("deletes it, and Undo brings it back", async () => {
    const { user } = await renderLog(twoCombos);
    const dialog = await sessionDialog(user);
    await user.click(dialog.getByRole("button", { name: "Delete this session" }));
    expect(await screen.findByRole("heading", { level: 1, name: /^A logbook/ })).toBeVisible();
    await user.click(undo());
    expect(await title("Varnholt Ring · Club hatch")).toBeVisible();
  });
});

describe("a reference lap", () => {
  it("needs a time and where it comes from, and laps are then measured against it", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700]));
    const dialog = await sessionDialog(user);
    await user.click(dialog.getByRole("button", { name: /^Reference lap/ }));
    await user.click(dialog.getByRole("button", { name: "Add the reference lap" }));
    expect(dialog.getByLabelText("Where it comes from")).toHaveAccessibleDescription(
      /where the time comes from/,
    );
    expect(dialog.getByLabelText("Time of the reference lap")).toBeInvalid();
    await user.type(dialog.getByLabelText("Time of the reference lap"), "1:23.4");
    await user.type(dialog.getByLabelText("Where it comes from"), "Jo, same car");
    await user.click(dialog.getByRole("button", { name: "Add the reference lap" }));
    const laps = within(await dialog.findByRole("list", { name: "Reference laps" }));
    expect(laps.getByText("1:23.4")).toBeVisible();
    expect(laps.getByText("Jo, same car")).toBeVisible();
    await user.click(dialog.getByRole("button", { name: "Done" }));
    expect(screen.getByText(/reference lap 1:23\.400/)).toBeVisible();
    expect(lapRows(1)[0]).toContain("+1.300");
    const again = await sessionDialog(user);
    await user.click(again.getByRole("button", { name: /^Reference lap/ }));
    await user.click(again.getByRole("button", { name: "Delete the reference lap 1:23.4" }));
    await waitFor(() =>
      expect(again.queryByRole("list", { name: "Reference laps" })).not.toBeInTheDocument(),
    );
  });
});

describe("a session that is not there", () => {
  it("says so and leads back, in place of an empty page", async () => {
    await renderLog(aCombo, "#/log/0192f0c1-2345-7000-8000-000000000000");
    expect(await title("This session is not there")).toBeVisible();
    const way = await screen.findByRole("link", { name: "Back to Log" });
    expect(way).toHaveAttribute("href", "#/log");
  });

  it("is said to be so beside an open one too, with the way there", async () => {
    let sessionId = "";
    const fill = async (book: Logbook) => {
      ({ sessionId } = await openWith(book, [84_700]));
    };
    await renderLog(fill, "#/log/0192-cut-short");
    expect(await title("This session is not there")).toBeVisible();
    const way = await screen.findByRole("link", { name: "Go to the open session" });
    expect(way).toHaveAttribute("href", `#/log/${sessionId}`);
  });

  it("is said also when it is deleted elsewhere while it is open", async () => {
    let sessionId = "";
    const { surroundings } = await renderLog(async (book) => {
      sessionId = (await openWith(book, [84_700])).sessionId;
    });
    window.location.hash = `#/log/${sessionId}`;
    await entryField();
    const name = useDevice.getState().logbook ?? "";
    const elsewhere = await openLogbook({ ...surroundings, name, expect: "old" });
    await deleteSession(elsewhere, { sessionId });
    elsewhere.close();
    expect(await title("This session is not there")).toBeVisible();
  });
});
