import { act, screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, addLap, addRig, addRigTest, addRun, editRun, type Logbook, rigs } from "#db";
import type { RigSettings } from "#domain";
import { useRows } from "#live";
import { RigScreen } from "../../../../src/screens/rig/RigScreen.tsx";
import { addSessions } from "../../../support/addSessions.ts";
import { aLap } from "../../../support/aLap.ts";
import { renderAt } from "../../../support/renderAt.tsx";

const aRig = (fields: Partial<RigSettings> = {}) => ({
  from: "2026-11-03",
  name: "",
  screen: {},
  view: {},
  wheel: {},
  pedals: {},
  seat: {},
  note: "",
  ...fields,
});
let stored: readonly RigSettings[] = [];
/** The screen, and the rows behind it as they are in the logbook. */
function Peek() {
  stored = useRows(rigs, []) ?? [];
  return <RigScreen />;
}

type User = Awaited<ReturnType<typeof renderAt>>["user"];
const recordFrom = (from: string) => stored.find((rig) => rig.from === from)?.id ?? "";
const field = (name: string) => screen.getByRole("textbox", { name });
const begin = async (user: User) => {
  await user.click(await screen.findByRole("button", { name: "Begin the first record" }));
  await screen.findByRole("button", { name: "Store" });
};

/** From the front to the record in force. */
const openSheet = async (user: User) =>
  user.click(await screen.findByRole("link", { name: "The full sheet" }));
/** From the front to a new record with all its fields. */
const change = async (user: User) => {
  await user.click(await screen.findByRole("link", { name: "Something changed" }));
  await user.click(await screen.findByRole("link", { name: "Several things: all fields" }));
  await screen.findByRole("button", { name: "Store" });
};

describe("the rig", () => {
  it("introduces itself, and stores the first record in metres", async () => {
    const { user } = await renderAt("#/rig", <RigScreen />);
    await begin(user);
    expect(field("From")).toHaveValue("Wed 25 Nov 2026");
    expect(field("From")).toHaveFocus();
    await user.click(screen.getByRole("radio", { name: "three" }));
    await user.type(field("Width of the picture"), "59,8");
    await user.type(field("Eye to screen"), "0.62 m");
    await user.type(field("Angle of the side screens"), "55°");
    await user.type(field("Torque at most"), "8 Nm");
    await user.click(screen.getByRole("button", { name: "Store" }));
    expect(await screen.findByText("In force since Wed 25 Nov 2026:")).toBeVisible();
    expect(screen.getByText("eye at 62 cm")).toBeVisible();
    await waitFor(() => expect(screen.getByRole("heading", { level: 1 })).toHaveFocus());
    await openSheet(user);
    expect(await screen.findByText("In force today, since Wed 25 Nov 2026")).toBeVisible();
    expect(screen.getByText("59.8 cm")).toBeVisible();
    expect(screen.getByText("8 N·m")).toBeVisible();
  });

  it("stores what is typed in the units of the logbook", async () => {
    const { user } = await renderAt("#/rig", <Peek />);
    await begin(user);
    await user.type(field("Height of the picture"), "336 mm");
    await user.type(field("Radius of the rim"), "15");
    await user.click(screen.getByRole("button", { name: "Store" }));
    await waitFor(() => expect(stored[0]?.screen).toEqual({ height: 0.336 }));
    expect(stored[0]?.wheel).toEqual({ rimRadius: 0.15 });
  });

  it("names each field that is wrong, keeps what was typed, and goes to the first", async () => {
    const { user } = await renderAt("#/rig", <RigScreen />);
    await begin(user);
    await user.clear(field("From"));
    await user.type(field("From"), "3/4/2026");
    await user.type(field("Rotation"), "1,080");
    await user.type(field("Gain"), "sixty");
    await user.click(screen.getByRole("button", { name: "Store" }));
    expect(await screen.findByText("Not stored yet: 3 fields have to be mended.")).toBeVisible();
    expect(field("From")).toHaveAccessibleDescription(/Write it as 2026-10-14 or 14 Oct 2026/);
    expect(field("Rotation")).toHaveAccessibleDescription(
      /Rotation: “1,080” can be read in two ways\. Write 1080 or 1\.08/,
    );
    expect(field("Gain")).toHaveAccessibleDescription(
      "Gain: “sixty” is not a number. Write a number from 0 to 1000 %.",
    );
    expect(field("Gain")).toHaveValue("sixty");
    await waitFor(() => expect(field("From")).toHaveFocus());
  });

  it("works out the field of view of the screen while it is typed, and says what is missing", async () => {
    const { user } = await renderAt("#/rig", <RigScreen />);
    await begin(user);
    const view = within(screen.getByRole("region", { name: "View" }));
    expect(view.queryByText("True to size at this screen")).toBeNull();
    await user.type(field("Width of the picture"), "70");
    expect(view.getByText("To work it out, write down: eye to screen.")).toBeVisible();
    await user.type(field("Eye to screen"), "65");
    // 2·atan(35/65), worked out by hand.
    expect(view.getByText("56.6° across")).toBeVisible();
    await user.click(screen.getByRole("radio", { name: "headset" }));
    expect(view.queryByText("True to size at this screen")).toBeNull();
    await user.click(screen.getByRole("radio", { name: "one flat" }));
    await user.click(screen.getByRole("button", { name: "Store" }));
    await openSheet(user);
    expect(await screen.findByRole("button", { name: "Correct this record" })).toBeVisible();
    expect(screen.getByText("56.6° across")).toBeVisible();
  });

  it("asks about a gain above 100 %, and stores it as typed", async () => {
    const { user } = await renderAt("#/rig", <Peek />);
    await begin(user);
    await user.type(field("Gain"), "100");
    expect(field("Gain")).not.toHaveAccessibleDescription();
    await user.type(field("Gain"), "0");
    expect(field("Gain")).toHaveAccessibleDescription(/^More than 100 %: is that what stands there/);
    await user.click(screen.getByRole("button", { name: "Store" }));
    await waitFor(() => expect(stored[0]?.wheel).toEqual({ gainPercent: 1000 }));
  });

  it("refuses a year no logbook takes, and a name too long, with the counts", async () => {
    const { user } = await renderAt("#/rig", <RigScreen />);
    await begin(user);
    await user.clear(field("From"));
    await user.type(field("From"), "0026-10-14");
    await user.click(field("Name of the record"));
    await user.paste("x".repeat(500));
    await user.click(screen.getByRole("button", { name: "Store" }));
    expect(field("From")).toHaveAccessibleDescription(/The year 0026 cannot be right/);
    expect(field("Name of the record")).toHaveAccessibleDescription(/500 signs are too many\. At most 400/);
  });

  it("keeps an open form across a reload, and cancelling really closes it", async () => {
    const { user, reload } = await renderAt("#/rig", <RigScreen />);
    await begin(user);
    await user.type(field("Gain"), "62");
    await waitFor(() => expect(field("Gain")).toHaveValue("62"));
    reload();
    expect(await screen.findByRole("textbox", { name: "Gain" })).toHaveValue("62");
    await user.click(screen.getByRole("button", { name: "Cancel" }));
    expect(await screen.findByRole("button", { name: "Begin the first record" })).toBeVisible();
    reload();
    expect(await screen.findByRole("button", { name: "Begin the first record" })).toBeVisible();
  });

  it("keeps the cautions beside the gain and the field of view, also before anything is typed", async () => {
    const { user } = await renderAt("#/rig", <RigScreen />);
    await begin(user);
    const wheel = screen.getByRole("region", { name: "Wheel and force feedback" });
    expect(within(wheel).getByText(/from about 8 N·m can injure/)).toBeVisible();
    const view = screen.getByRole("region", { name: "View" });
    expect(within(view).getByText(/wrong field of view makes sickness more likely/)).toBeVisible();
  });
});

describe("a caution that was read", () => {
  it("is a line from then on, and a press away; that of a strong wheel stays in full", async () => {
    const { user, reload } = await renderAt("#/rig", <RigScreen />);
    await begin(user);
    const view = () => within(screen.getByRole("region", { name: "View" }));
    const wheel = () => within(screen.getByRole("region", { name: "Wheel and force feedback" }));
    await user.click(view().getByRole("button", { name: /^I have read/ }));
    expect(view().queryByText(/makes sickness more likely/)).toBeNull();
    await user.click(view().getByRole("button", { name: /^Show the caution/ }));
    expect(view().getByText(/makes sickness more likely/)).toBeVisible();
    // Of a wheel nothing is known yet, so it may be a strong one.
    expect(wheel().queryByRole("button", { name: /^I have read/ })).toBeNull();
    await user.type(field("Torque at most"), "8");
    expect(wheel().queryByRole("button", { name: /^I have read/ })).toBeNull();
    await user.clear(field("Torque at most"));
    await user.type(field("Torque at most"), "2.5");
    await user.click(wheel().getByRole("button", { name: /^I have read/ }));
    expect(wheel().queryByText(/from about 8 N·m can injure/)).toBeNull();
    await user.clear(field("Torque at most"));
    await user.type(field("Torque at most"), "12");
    expect(wheel().getByText(/from about 8 N·m can injure/)).toBeVisible();
    reload();
    await screen.findByRole("region", { name: "View" });
    expect(view().queryByText(/makes sickness more likely/)).toBeNull();
  });
});

describe("records over time", () => {
  const two = async (book: Logbook) => {
    await addRig(
      book,
      aRig({ from: "2026-09-01", wheel: { name: "\u202Ewheel <script>", gainPercent: 62 } }),
    );
    await addRig(book, aRig({ wheel: { name: "\u202Ewheel <script>", gainPercent: 55 }, name: "gain down" }));
    await addRig(book, aRig({ from: "2026-12-24", wheel: { gainPercent: 50 } }));
  };

  it("says which one is in force today and what changed between neighbours", async () => {
    await renderAt("#/rig", <RigScreen />, two);
    expect(await screen.findByText("In force since Tue 3 Nov 2026:")).toBeVisible();
    expect(screen.getByText("gain 55 %")).toBeVisible();
    const list = screen.getByRole("list", { name: "Records of the rig and rig tests, the newest first" });
    const [newest, middle, oldest] = within(list).getAllByRole("listitem");
    expect(newest).toHaveTextContent("not yet in forcewhich wheel no longer said · gain 55 % to 50 %");
    expect(middle).toHaveTextContent("in force todaygain downgain 62 % to 55 %");
    expect(oldest).toHaveTextContent("the first record");
  });

  it("begins a new record as the one in force, and says what differs while it is typed", async () => {
    const { user } = await renderAt("#/rig", <RigScreen />, two);
    await change(user);
    expect(field("Gain")).toHaveValue("55");
    expect(field("From")).toHaveValue("Wed 25 Nov 2026");
    expect(screen.getByText("Nothing is different yet.")).toBeVisible();
    await user.clear(field("Gain"));
    await user.type(field("Gain"), "58");
    expect(screen.getByText("Changed: gain 55 % to 58 %")).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Store" }));
    expect(await screen.findByText("In force since Wed 25 Nov 2026:")).toBeVisible();
  });

  it("opens at the value that is wanted, alone with its caution, and stores the rest as it was", async () => {
    const { user } = await renderAt("#/rig", <Peek />, two);
    await openSheet(user);
    await user.click(await screen.findByRole("link", { name: "Gain: it has changed" }));
    await waitFor(() => expect(field("Gain")).toHaveFocus());
    expect(screen.getAllByRole("textbox")).toHaveLength(1);
    expect(screen.getByText(/from about 8 N·m can injure/)).toBeVisible();
    expect(screen.getByText(/^From Wed 25 Nov 2026 on\./)).toBeVisible();
    // What stood there is selected: typing takes its place.
    await user.keyboard("50{Enter}");
    expect(await screen.findByText("In force since Wed 25 Nov 2026:")).toBeVisible();
    expect(window.location.hash).toBe("#/rig");
    const fresh = stored.find(({ from }) => from === "2026-11-25");
    expect(fresh?.wheel).toEqual({ name: "\u202Ewheel <script>", gainPercent: 50 });
  });

  it("opens whole from the wanted value, keeps what is typed, and is left by Cancel", async () => {
    const { user } = await renderAt("#/rig?field=wheel.gainPercent", <RigScreen />, two);
    await waitFor(() => expect(field("Gain")).toHaveFocus());
    await user.keyboard("51");
    await user.click(screen.getByRole("button", { name: "All fields" }));
    expect(field("Gain")).toHaveValue("51");
    expect(field("Gain")).toHaveFocus();
    expect(field("From")).toHaveValue("Wed 25 Nov 2026");
    await user.click(screen.getByRole("button", { name: "Cancel" }));
    expect(await screen.findByText("In force since Tue 3 Nov 2026:")).toBeVisible();
    expect(screen.queryByRole("textbox")).toBeNull();
  });

  it("stores the value that is asked for alone, whatever is half filled in elsewhere", async () => {
    const { user } = await renderAt("#/rig", <Peek />, two);
    await change(user);
    await user.clear(field("Rotation"));
    await user.type(field("Rotation"), "540");
    window.location.hash = "#/rig?field=wheel.gainPercent";
    await waitFor(() => expect(screen.queryByRole("textbox", { name: "Rotation" })).toBeNull());
    await waitFor(() => expect(field("Gain")).toHaveFocus());
    await user.keyboard("50{Enter}");
    await waitFor(() => expect(recordFrom("2026-11-25")).not.toBe(""));
    const fresh = stored.find(({ from }) => from === "2026-11-25");
    expect(fresh?.wheel).toEqual({ name: "\u202Ewheel <script>", gainPercent: 50 });
    await user.click(await screen.findByRole("link", { name: "Go on with it" }));
    expect(await screen.findByRole("textbox", { name: "Rotation" })).toHaveValue("540");
    // What has come into force since shows through what was not typed.
    expect(field("Gain")).toHaveValue("50");
  });

  it("opens on its front again after a form was opened and left untouched", async () => {
    const { user } = await renderAt("#/rig", <RigScreen />, two);
    await change(user);
    window.location.hash = "#/rig";
    expect(await screen.findByText("In force since Tue 3 Nov 2026:")).toBeVisible();
    expect(screen.queryByText(/half filled in/)).toBeNull();
    await change(user);
    await user.type(field("Gain"), "8");
    window.location.hash = "#/rig";
    expect(await screen.findByText(/half filled in/)).toBeVisible();
    expect(screen.getByText("In force since Tue 3 Nov 2026:")).toBeVisible();
  });

  it("lets a value be picked, those changed before and those written down first, and goes back to the session", async () => {
    const sessionId = "01900000-0000-7000-8000-00000000000a";
    const { user } = await renderAt(`#/rig?field=&session=${sessionId}`, <RigScreen />, two);
    const before = within(await screen.findByRole("region", { name: "Changed before" }));
    expect(before.getAllByRole("link").map((link) => link.textContent)).toEqual([
      "Which wheel\u202Ewheel <script>",
      "Gain55 %",
    ]);
    const wheel = within(screen.getByRole("region", { name: "Wheel and force feedback" }));
    expect(wheel.getAllByRole("link").map((link) => link.textContent)).toEqual([
      "Torque at most",
      "Damping",
      "Rotation",
      "Radius of the rim",
      "Note on the wheel",
    ]);
    await user.click(before.getByRole("link", { name: /^Gain/ }));
    await waitFor(() => expect(field("Gain")).toHaveFocus());
    await user.keyboard("50");
    await user.click(screen.getByRole("button", { name: "Store" }));
    await waitFor(() => expect(window.location.hash).toBe(`#/log/${sessionId}`));
  });

  it("goes to the record that a link asks for, also past a form that is half filled in", async () => {
    const { user } = await renderAt("#/rig", <Peek />, two);
    await change(user);
    await user.type(field("Gain"), "8");
    act(() => {
      window.location.hash = `#/rig/${recordFrom("2026-09-01")}`;
      window.dispatchEvent(new HashChangeEvent("hashchange"));
    });
    const title = await screen.findByRole("heading", { level: 2, name: "From Tue 1 Sep 2026" });
    await waitFor(() => expect(title).toContainElement(document.activeElement as HTMLElement));
    expect(screen.queryByRole("textbox", { name: "Gain" })).toBeNull();
    await user.click(screen.getByRole("link", { name: "Go on with it" }));
    expect(await screen.findByRole("textbox", { name: "Gain" })).toHaveValue("558");
  });

  it("lets a value be picked also while a form is half filled in, and opens that one field", async () => {
    const { user } = await renderAt("#/rig", <RigScreen />, two);
    await change(user);
    act(() => {
      window.location.hash = "#/rig?field=";
      window.dispatchEvent(new HashChangeEvent("hashchange"));
    });
    await user.click(await screen.findByRole("link", { name: /^Gain/ }));
    await waitFor(() => expect(field("Gain")).toHaveFocus());
    expect(screen.queryByRole("textbox", { name: "Rotation" })).toBeNull();
  });

  it("puts an old record right, deletes one, and takes that back", async () => {
    const { user } = await renderAt("#/rig", <RigScreen />, two);
    await user.click(await screen.findByRole("link", { name: "Tue 1 Sep 2026" }));
    expect(await screen.findByText("No longer in force: Tue 1 Sep 2026 to Tue 3 Nov 2026")).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Correct this record" }));
    expect(field("From")).toHaveFocus();
    await user.clear(field("Gain"));
    await user.type(field("Gain"), "64");
    await user.click(screen.getByRole("button", { name: "Store" }));
    expect(await screen.findByText("64 %")).toBeVisible();
    await waitFor(() => expect(screen.getByRole("heading", { level: 1 })).toHaveFocus());
    await user.click(screen.getByRole("button", { name: "Delete this record" }));
    await waitFor(() => expect(screen.queryByRole("link", { name: "Tue 1 Sep 2026" })).toBeNull());
    await waitFor(() => expect(screen.getByRole("heading", { level: 1 })).toHaveFocus());
    expect(await screen.findByText("In force since Tue 3 Nov 2026:")).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Undo" }));
    expect(await screen.findByRole("link", { name: "Tue 1 Sep 2026" })).toBeVisible();
  });

  it("sets the evenings before a change and after it side by side, and says where practice may be all", async () => {
    const { user } = await renderAt("#/rig", <RigScreen />, async (book) => {
      await two(book);
      const { comboId } = await addCombo(book, {
        car: { name: "club hatch" },
        track: { name: "Varnholt Ring" },
      });
      const about = (ms: number) => [0, 200, -100, 100, -200].map((off) => ms + off);
      await addSessions(book, comboId, [
        { date: "2026-10-20", laps: about(84_900) },
        { date: "2026-10-27", laps: about(85_100) },
        { date: "2026-11-10", laps: about(85_100) },
        { date: "2026-11-17", laps: about(84_900) },
      ]);
    });
    const last = await screen.findByRole("region", { name: "The last change" });
    expect(last).toHaveTextContent("The last change, Tue 3 Nov 2026: gain down (gain 62 % to 55 %)");
    expect(last).toHaveTextContent(/No difference to be seen: between .* faster and .* slower/);
    await waitFor(() =>
      expect(last).toHaveTextContent(
        "Varnholt Ring · club hatch, from the weeks before and after; not a test",
      ),
    );
    await openSheet(user);
    const list = await screen.findByRole("list", { name: "Each combo before and after" });
    expect(within(list).getAllByRole("listitem")).toHaveLength(1);
    expect(within(list).getByRole("heading", { name: "Varnholt Ring · club hatch" })).toBeVisible();
    expect(
      within(list).getByText(/^No difference to be seen: between .* faster and .* slower$/),
    ).toBeVisible();
    expect(list).toHaveTextContent(/before: 1:25\.000 in 2 sessions/);
    expect(list).toHaveTextContent(/after: 1:25\.000 in 2 sessions/);
    // The dots of both sides stand on one scale: the slower evening higher, the same one as high.
    expect(
      within(list)
        .getAllByRole("figure")
        .map((figure) => figure.getAttribute("aria-label")),
    ).toEqual([
      "Usual laps before, one a session: 2 laps, best 1:24.900",
      "Usual laps after, one a session: 2 laps, best 1:24.900",
    ]);
  });

  it("says in full which sessions stand on neither side, also where no side has any", async () => {
    const { user } = await renderAt("#/rig", <RigScreen />, async (book) => {
      await two(book);
      const names = { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } };
      const { comboId } = await addCombo(book, names);
      await addSessions(book, comboId, [
        { date: "2026-11-10", laps: [85_000, 85_100, 85_200, 85_300, 85_400] },
      ]);
      const [session] = await book.tables.sessions.toArray();
      const [old, fresh] = (await rigs(book)).toSorted((a, b) => (a.from < b.from ? -1 : 1));
      if (!session || !old || !fresh) throw new Error("a session and two records");
      const [run] = await book.tables.runs.toArray();
      await editRun(book, { runId: run?.id ?? "", patch: { rigId: old.id } });
      const { runId } = await addRun(book, { sessionId: session.id, settings: { rigId: fresh.id } });
      for (const ms of [85_000, 85_100, 85_200])
        await addLap(book, { runId, id: book.newId(), lap: aLap(ms) });
    });
    await openSheet(user);
    expect(
      await screen.findByText("Tue 10 Nov 2026 was driven with both settings and counts on neither side."),
    ).toBeVisible();
  });

  it("goes back to an old record in one press, as a new one from today, and takes that back", async () => {
    const { user } = await renderAt("#/rig", <Peek />, two);
    await user.click(await screen.findByRole("link", { name: "Tue 1 Sep 2026" }));
    await user.click(await screen.findByRole("button", { name: "Go back to these settings" }));
    expect(await screen.findByText("In force since Wed 25 Nov 2026:")).toBeVisible();
    const [old, again] = [recordFrom("2026-09-01"), recordFrom("2026-11-25")].map((id) =>
      stored.find((rig) => rig.id === id),
    );
    expect(again).toMatchObject({ name: "Back to the settings of Tue 1 Sep 2026", wheel: old?.wheel });
    const list = screen.getByRole("list", { name: "Records of the rig and rig tests, the newest first" });
    expect(within(list).getAllByRole("listitem")[1]).toHaveTextContent(/Wed 25 Nov 2026.*gain 55 % to 62 %/);
    await user.click(screen.getByRole("button", { name: "Undo" }));
    expect(await screen.findByText("In force since Tue 3 Nov 2026:")).toBeVisible();
    expect(stored).toHaveLength(3);
  });

  it("offers no way back to what says the same as the record in force", async () => {
    const { user } = await renderAt("#/rig", <RigScreen />, async (book) => {
      await addRig(book, aRig({ from: "2026-09-01", wheel: { gainPercent: 62 } }));
      await addRig(book, aRig({ from: "2026-11-03", wheel: { gainPercent: 62 } }));
    });
    await user.click(await screen.findByRole("link", { name: "Tue 1 Sep 2026" }));
    expect(await screen.findByRole("button", { name: "Correct this record" })).toBeVisible();
    expect(screen.queryByRole("button", { name: "Go back to these settings" })).toBeNull();
  });

  it("shows tests where they ended, each leading to its page, and says of evenings that they are no test", async () => {
    await renderAt("#/rig", <RigScreen />, async (book) => {
      await two(book);
      const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Ring" } });
      await addRigTest(book, {
        comboId,
        question: "less gain?",
        sayA: "gain 62 %",
        sayB: "gain 55 %",
        pairsPlanned: 6,
        level: 0.1,
        seed: 1,
        pairs: [{ first: "A" }],
        endedAt: Date.UTC(2026, 10, 1, 20),
        kept: "B",
      });
    });
    const list = await screen.findByRole("list", {
      name: "Records of the rig and rig tests, the newest first",
    });
    await waitFor(() => expect(within(list).getAllByRole("listitem")).toHaveLength(4));
    const [, , test] = within(list).getAllByRole("listitem");
    expect(test).toHaveTextContent(
      /^Sun 1 Nov 2026Tested gain 55 % against 62 %0 of 6 pairs are in this logbook.*kept gain 55 %$/,
    );
    const last = await screen.findByRole("region", { name: "The last test" });
    await waitFor(() =>
      expect(last).toHaveTextContent(
        /^The last test: gain 55 % against 62 %0 of 6 pairs are in this logbook.*Ring · club hatch, 0 pairs of runs; kept gain 55 %$/,
      ),
    );
    expect(within(list).getByRole("link", { name: "Tested gain 55 % against 62 %" })).toHaveAttribute(
      "href",
      expect.stringMatching(/^#\/rig\?test=/),
    );
  });

  it("shows no laps before and after the first record", async () => {
    const { user } = await renderAt("#/rig", <RigScreen />, (book) => addRig(book, aRig()));
    await openSheet(user);
    expect(await screen.findByText("In force today, since Tue 3 Nov 2026")).toBeVisible();
    expect(screen.queryByText("Did it help?")).toBeNull();
  });

  it("says so when the address names a record that is not there", async () => {
    await renderAt("#/rig/01900000-0000-7000-8000-000000000000", <RigScreen />, two);
    expect(await screen.findByText(/is not in the logbook/)).toBeVisible();
  });
});
