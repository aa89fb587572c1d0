import { fireEvent, screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it, vi } from "vitest";
import { addRig, type Logbook, rigs } from "#db";
import type { RigSettings } from "#domain";
import { useRows } from "#live";
import { ScreenSum } from "../../../../../src/screens/rig/screen/ScreenSum.tsx";
import { renderAt } from "../../../../support/renderAt.tsx";

let stored: readonly RigSettings[] = [];
const onStored = vi.fn();
/** The sum over the newest record, and the rows as they are in the logbook. */
function Peek() {
  const rows = useRows(rigs, []);
  stored = rows ?? [];
  return rows && <ScreenSum inForce={rows.at(-1)} today="2026-11-25" onStored={onStored} />;
}
const draw = (fill?: (book: Logbook) => Promise<unknown>) => renderAt("#/rig?part=screen", <Peek />, fill);
const aRecord = (book: Logbook) =>
  addRig(book, {
    from: "2026-11-03",
    name: "",
    screen: { kind: "flat", width: 0.6, height: 0.34, eyeDistance: 0.65 },
    view: { degrees: 50, axis: "horizontal" },
    wheel: { gainPercent: 55 },
    pedals: {},
    seat: {},
    note: "",
  });
const field = (name: string) => screen.getByRole("textbox", { name });
const store = () => screen.getByRole("button", { name: "Store this" });

describe("the field of view worked out", () => {
  it("goes from a diagonal and a distance to one record with the figure to set", async () => {
    const { user } = await draw();
    await user.type(await screen.findByRole("textbox", { name: "Diagonal" }), "27");
    expect(field("Width")).toHaveValue("59.77");
    expect(field("Height")).toHaveValue("33.62");
    await user.type(field("Eye to screen"), "60");
    // 52.956° by 31.304° (test/reference/viewing-geometry, 27 inches at 600 mm).
    expect(
      screen.getByRole("heading", { name: "Set the field of view to 53° across (31° upright)" }),
    ).toBeVisible();
    expect(
      screen.getByRole("img", { name: /59\.8 cm wide, 60 cm from the eye\. Seen under 53\.0°/ }),
    ).toBeVisible();
    const rows = within(screen.getByRole("table", { name: "Angles, as seen" })).getAllByRole("row");
    expect(rows.map((row) => row.textContent)).toEqual([
      "acrossupright",
      "this screen53.0°31.3°",
      // 2·atan(29.885/50) and 2·atan(16.81/50), 2·atan(29.885/70) and 2·atan(16.81/70), by hand.
      "ten centimetres nearer61.7°37.2°",
      "ten centimetres farther46.2°27.0°",
    ]);
    await user.click(store());
    await waitFor(() => expect(stored).toHaveLength(1));
    expect(stored[0]).toMatchObject({
      from: "2026-11-25",
      screen: { kind: "flat", width: 0.5977, height: 0.3362, eyeDistance: 0.6 },
      view: { degrees: 53, axis: "horizontal" },
    });
    expect(onStored).toHaveBeenCalledOnce();
    expect(screen.getByRole("button", { name: "Undo" })).toBeVisible();
  });

  it("starts from the record in force, changes only the screen and the view, and says what it changes", async () => {
    const { user } = await draw(aRecord);
    const distance = await screen.findByRole("textbox", { name: "Eye to screen" });
    expect(distance).toHaveValue("65");
    expect(screen.getByText("Nothing is different yet.")).toBeVisible();
    await user.click(store());
    expect(screen.getByText("It is what the record in force says: nothing to store.")).toBeVisible();
    expect(stored).toHaveLength(1);
    await user.clear(distance);
    await user.type(distance, "60");
    expect(
      screen.getByText("Changed: eye to screen 65 cm to 60 cm · field of view 50° to 53°"),
    ).toBeVisible();
    await user.click(screen.getByRole("radio", { name: "upright" }));
    await user.click(store());
    await waitFor(() => expect(stored).toHaveLength(2));
    // 2·atan(17/60) = 31.6°, by hand.
    const newest = stored.find(({ from }) => from === "2026-11-25");
    expect(newest).toMatchObject({ view: { degrees: 32, axis: "vertical" }, wheel: { gainPercent: 55 } });
  });

  it("of three screens tells each and all, and takes the square turn over", async () => {
    const { user } = await draw();
    await user.click(await screen.findByRole("radio", { name: "three" }));
    await user.type(field("Width"), "60");
    await user.type(field("Height"), "34");
    await user.type(field("Eye to screen"), "65");
    expect(screen.getByText("To work it out, write down: angle of the side screens.")).toBeVisible();
    // Without a frame the eye is square before them at 2·atan(30/65) = 49.55°, by hand: told before any turn is.
    expect(screen.getByText(/^Turned by 50°, each side screen faces the eye/)).toBeVisible();
    expect(screen.getByRole("button", { name: "Turn them to 50°" })).toBeVisible();
    await user.type(field("Side angle"), "45");
    await user.type(field("Frame"), "2");
    expect(screen.getByRole("row", { name: /^each side screen/ })).toHaveTextContent("46.7°");
    // Worked by hand in our methods, §8: 60 cm at 65 cm with frames of 2 cm stand square at 52.42°.
    await user.click(screen.getByRole("button", { name: "Turn them to 52°" }));
    expect(field("Side angle")).toHaveValue("52");
    expect(screen.getByRole("row", { name: /^all together/ })).toHaveTextContent(/^all together15[34]\.\d°/);
    expect(screen.queryByRole("button", { name: /^Turn them/ })).toBeNull();
    await user.click(screen.getByRole("radio", { name: "across all three" }));
    expect(
      screen.getByRole("heading", { name: /^Set the field of view to 15[34]° across all three/ }),
    ).toBeVisible();
  });

  it("says what cannot be at its field once it is left, and draws what it can", async () => {
    const { user } = await draw();
    await user.click(await screen.findByRole("radio", { name: "curved" }));
    await user.type(field("Width"), "120");
    await user.type(field("Eye to screen"), "70");
    await user.type(field("Radius"), "3");
    // On the way to a figure nothing is said of it, in the result neither.
    expect(screen.getByText("—")).toBeVisible();
    expect(field("Radius")).not.toHaveAccessibleDescription(/more than half|out of range/);
    await user.type(field("Radius"), "0");
    await user.tab();
    expect(field("Radius")).toHaveAccessibleDescription(
      /120 cm wide would be more than half a circle at this radius\. Write a radius of 38\.2 cm or more/,
    );
    // What is wrong stands once, at the field.
    expect(screen.getAllByText(/more than half a circle/)).toHaveLength(1);
    expect(screen.getByText("To work it out, mend “Radius”.")).toBeVisible();
    expect(screen.getByRole("img", { name: /^A curved screen from above/ })).toBeVisible();
    await user.clear(field("Eye to screen"));
    await user.type(field("Eye to screen"), "0");
    await user.click(store());
    expect(screen.getByText("Not stored yet: something is missing or has to be mended.")).toBeVisible();
    expect(field("Eye to screen")).toHaveAccessibleDescription(/Eye to screen: 0 is out of range/);
    expect(stored).toHaveLength(0);
  });

  it("turns lengths into inches and back, and reads a unit that is typed", async () => {
    const { user } = await draw(aRecord);
    await user.click(await screen.findByRole("radio", { name: "inches" }));
    expect(field("Eye to screen")).toHaveValue("25.59");
    await user.clear(field("Eye to screen"));
    await user.type(field("Eye to screen"), "60 cm");
    expect(screen.getByRole("img", { name: /23\.6 in from the eye/ })).toBeVisible();
    await user.click(screen.getByRole("radio", { name: "cm" }));
    expect(field("Eye to screen")).toHaveValue("60 cm");
    expect(field("Width")).toHaveValue("59.99");
  });

  it("moves a figure by the arrow keys, with its unit", async () => {
    const { user } = await draw(aRecord);
    await user.click(await screen.findByRole("textbox", { name: "Eye to screen" }));
    await user.keyboard("{ArrowUp}{ArrowUp}{ArrowDown}");
    expect(field("Eye to screen")).toHaveValue("66");
    await user.keyboard("{Shift>}{ArrowDown}{/Shift}");
    expect(field("Eye to screen")).toHaveValue("56");
  });

  it("keeps what is typed across a reload, and begins again when asked", async () => {
    const { user, reload } = await draw(aRecord);
    await user.clear(await screen.findByRole("textbox", { name: "Eye to screen" }));
    await user.type(field("Eye to screen"), "72");
    reload();
    expect(await screen.findByRole("textbox", { name: "Eye to screen" })).toHaveValue("72");
    await user.click(screen.getByRole("button", { name: "Begin again" }));
    expect(field("Eye to screen")).toHaveValue("65");
    await user.click(screen.getByRole("button", { name: "Bring back what was typed" }));
    expect(field("Eye to screen")).toHaveValue("72");
    expect(screen.queryByRole("button", { name: "Bring back what was typed" })).toBeNull();
  });

  it("takes up what was half typed in a tab that is gone, and leaves alone what an open one holds", async () => {
    const { user, otherTab } = await draw();
    await user.type(await screen.findByRole("textbox", { name: "Diagonal" }), "32");
    otherTab("open");
    expect(await screen.findByRole("textbox", { name: "Diagonal" })).toHaveValue("");
    otherTab("closed");
    await waitFor(() => expect(field("Diagonal")).toHaveValue("32"));
  });

  it("follows a hand that moves the eye, and one that turns a side screen", async () => {
    const { user } = await draw(aRecord);
    await user.click(await screen.findByRole("radio", { name: "three" }));
    await user.type(field("Side angle"), "45");
    const handles = screen.getByRole("img").querySelectorAll<SVGGElement>("g[data-handle]");
    const drag = (handle: SVGGElement | undefined, x: number, y: number) => {
      if (handle === undefined) throw new Error("no handle");
      handle.setPointerCapture = () => undefined;
      const at = { pointerId: 1, isPrimary: true, button: 0 };
      fireEvent.pointerDown(handle, { ...at, clientX: 300, clientY: 300 });
      fireEvent.pointerMove(handle, { ...at, clientX: 300 + x, clientY: 300 + y });
      fireEvent.pointerUp(handle, at);
    };
    const numberIn = (name: string) => Number((field(name) as HTMLInputElement).value);
    drag(handles[0], 0, -40);
    expect(numberIn("Eye to screen")).toBeLessThan(65);
    expect(numberIn("Eye to screen")).toBeGreaterThan(40);
    drag(handles[1], -60, 60);
    expect(numberIn("Side angle")).toBeGreaterThan(45);
    drag(handles[0], 0, -4000);
    expect(numberIn("Eye to screen")).toBe(10);
    drag(handles[1], 0, -4000);
    expect(numberIn("Side angle")).toBe(0);
  });

  it("has the caution in full before anything is typed", async () => {
    await draw();
    expect(await screen.findByText(/wrong field of view makes sickness more likely/)).toBeVisible();
  });
});

describe("a card held against this screen", () => {
  it("gives the size of the picture from the card's, and takes it over", async () => {
    vi.stubGlobal("screen", { width: 1920, height: 1080 });
    const { user } = await draw();
    await user.click(await screen.findByRole("button", { name: /How large is this screen/ }));
    // A card of 85.60 mm (ISO/IEC 7810, ID-1) that is 428 px wide: five px a millimetre.
    fireEvent.change(screen.getByRole("slider", { name: "Size of the outline" }), {
      target: { value: "428" },
    });
    expect(screen.getByText(/^This screen: 38\.4 cm × 21\.6 cm\./)).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Take these" }));
    expect(field("Width")).toHaveValue("38.4");
    expect(field("Height")).toHaveValue("21.6");
    expect(field("Pixels across")).toHaveValue("1920");
    await user.type(field("Eye to screen"), "60");
    // 1920 px over 38.4 cm at 60 cm: 50 px a cm, 1.0472 cm a degree.
    expect(screen.getByText(/^52 pixels a degree/)).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Larger" }));
    expect(screen.getByText(/^This screen: 38\.4 cm × 21\.6 cm\./)).toBeVisible();
    vi.unstubAllGlobals();
  });
});
