import { act, screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addRig, type Logbook, rigs } from "#db";
import type { RigSettings } from "#domain";
import { useLogbook, useRows } from "#live";
import { RigScreen } from "../../../../../src/screens/rig/RigScreen.tsx";
import { renderAt } from "../../../../support/renderAt.tsx";

const fill = (wheel: RigSettings["wheel"]) => (book: Logbook) =>
  addRig(book, {
    from: "2026-11-03",
    name: "as it came",
    screen: { kind: "flat", width: 0.6 },
    view: { degrees: 55 },
    wheel,
    pedals: {},
    seat: {},
    note: "kept back",
  });
let stored: readonly RigSettings[] = [];
let shelved: Logbook | undefined;
function Peek() {
  shelved = useLogbook().book;
  stored = useRows(rigs, []) ?? [];
  return <RigScreen />;
}
const field = (name: string) => screen.getByRole("textbox", { name });
const at = "#/rig?part=wheel";

describe("the gain worked out", () => {
  it("starts from the record in force, and stores a new one with all the rest as it was", async () => {
    const { user } = await renderAt(at, <Peek />, fill({ gainPercent: 60, torque: 8, rimRadius: 0.15 }));
    expect(await screen.findByRole("textbox", { name: "Gain now" })).toHaveValue("60");
    await user.type(field("Peak seen"), "80");
    // 60 · 0.9 / 0.8 = 67.5, told as no more than that.
    expect(screen.getByText("67 %")).toBeVisible();
    expect(screen.getByText(/Headroom now 1\.9 dB: a force up to 25 % stronger/)).toBeVisible();
    expect(field("Gain to store")).toHaveValue("65");
    expect(screen.getByText(/^Go up at most 5 points at a time: begin at 65 %/)).toBeVisible();
    expect(screen.getByText("A step on the way from 60 % to what was worked out: 67 %.")).toBeVisible();
    // 80 · 65 / 60 = 86.7 % of 8 N·m, over 0.15 m, by hand.
    expect(screen.getByText("6.9 N·m")).toBeVisible();
    expect(screen.getByText(/46 N at the hands, as heavy as 4\.7 kg/)).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Store this gain" }));
    await waitFor(() => expect(stored).toHaveLength(2));
    const made = stored.find(({ from }) => from === "2026-11-25");
    expect(made).toMatchObject({
      name: "Gain worked out",
      screen: { kind: "flat", width: 0.6 },
      view: { degrees: 55 },
      wheel: { gainPercent: 65, torque: 8, rimRadius: 0.15 },
    });
    expect(made?.note).toBe("At 60 %: strongest force 80 % of the limit, 10 % kept free. Worked out: 67 %.");
    expect(location.hash).toBe("#/rig");
    await user.click(await screen.findByRole("button", { name: "Undo" }));
    await waitFor(() => expect(stored).toHaveLength(1));
  });

  it("offers no more than a slider gives, and never a great step up", async () => {
    const { user } = await renderAt(at, <Peek />, fill({ gainPercent: 70 }));
    await user.type(await screen.findByRole("textbox", { name: "Peak seen" }), "30");
    expect(screen.getByText("100 %")).toBeVisible();
    expect(screen.getByText(/^By the sum it would be 210 %\. Most sliders end at 100 %/)).toBeVisible();
    expect(field("Gain to store")).toHaveValue("75");
    await user.clear(field("Gain to store"));
    await user.type(field("Gain to store"), "100");
    expect(screen.getByText(/^It is 30 points up at once/)).toBeVisible();
    await user.clear(field("Gain now"));
    await user.type(field("Gain now"), "100");
    expect(screen.queryByText(/^Go up at most/)).toBeNull();
  });

  it("keeps the gain at which a force was seen, whatever becomes the record in force meanwhile", async () => {
    const { user } = await renderAt(at, <Peek />, fill({ gainPercent: 54 }));
    await user.type(await screen.findByRole("textbox", { name: "Peak seen" }), "95");
    // 54 · 0.9 / 0.95 = 51.2, by hand.
    expect(screen.getByText("51 %")).toBeVisible();
    const book = shelved;
    if (book === undefined) throw new Error("no logbook");
    await act(() =>
      addRig(book, {
        from: "2026-11-25",
        name: "in another tab",
        screen: {},
        view: {},
        wheel: { gainPercent: 60 },
        pedals: {},
        seat: {},
        note: "",
      }),
    );
    expect(await screen.findByText(/^The record in force says 60 %/)).toBeVisible();
    expect(field("Gain now")).toHaveValue("54");
    expect(screen.getByText("51 %")).toBeVisible();
    // Nothing seen that could belong to another gain.
    await user.clear(field("Peak seen"));
    expect(screen.queryByText(/^The record in force says/)).toBeNull();
  });

  it("gives a range for a share of time, with the reason, and offers its near end", async () => {
    const { user } = await renderAt(at, <Peek />, fill({ gainPercent: 60 }));
    await user.click(await screen.findByRole("radio", { name: "how long it is at the limit" }));
    await user.type(field("At the limit"), "5");
    // By R's qnorm: 0.6505 and 0.7609 of 60.
    expect(screen.getByText("39 to 45 %")).toBeVisible();
    expect(screen.getByText(/cannot be seen.*Begin at 45 %/)).toBeVisible();
    expect(field("Gain to store")).toHaveValue("45");
    const now = screen.getByRole("img", { name: /^At 60 % what lies over the limit is cut off/ });
    expect(now).toBeVisible();
    expect(screen.getByText(/^A sketch of the principle/)).toBeVisible();
    await user.clear(field("Gain to store"));
    await user.type(field("Gain to store"), "52");
    expect(screen.getByText("A step on the way from 60 % to what was worked out: 39 to 45 %.")).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Store this gain" }));
    await waitFor(() => expect(stored).toHaveLength(2));
    expect(stored.find(({ from }) => from === "2026-11-25")?.wheel).toEqual({ gainPercent: 52 });
  });

  it("says what is wrong with a peak that is cut off, and leads to the other way", async () => {
    const { user } = await renderAt(at, <RigScreen />, fill({ gainPercent: 60 }));
    await user.type(await screen.findByRole("textbox", { name: "Peak seen" }), "100");
    expect(screen.getByText(/strongest force is cut off/)).toBeVisible();
    expect(screen.queryByRole("img")).toBeNull();
    await user.click(screen.getByRole("button", { name: "I saw how long it is at the limit" }));
    expect(screen.getByRole("radio", { name: "how long it is at the limit" })).toBeChecked();
    await user.type(field("At the limit"), "30");
    expect(screen.getByText(/From 30 % of the time at the limit on/)).toBeVisible();
    await user.clear(field("At the limit"));
    await user.type(field("At the limit"), "0");
    await user.click(screen.getByRole("button", { name: "I saw the strongest force" }));
    expect(field("Peak seen")).toHaveValue("100");
  });

  it("keeps what was typed across a reload, and refuses nothing silently", async () => {
    const { user, reload } = await renderAt(at, <RigScreen />, fill({ gainPercent: 60 }));
    await user.type(await screen.findByRole("textbox", { name: "Peak seen" }), "eighty");
    await user.click(screen.getByRole("button", { name: "Store this gain" }));
    expect(field("Peak seen")).toHaveAccessibleDescription(/“eighty” is not a number/);
    reload();
    expect(await screen.findByRole("textbox", { name: "Peak seen" })).toHaveValue("eighty");
    await user.clear(field("Peak seen"));
    await user.click(screen.getByRole("button", { name: "Store this gain" }));
    expect(field("Gain to store")).toHaveAccessibleDescription(
      "There is no gain to store yet. Type what you saw, or a gain.",
    );
  });

  it("says at its field what cannot be read once that is left, and asks for what is missing by its name", async () => {
    const { user } = await renderAt(at, <RigScreen />, fill({ gainPercent: 60 }));
    await user.clear(await screen.findByRole("textbox", { name: "Gain now" }));
    await user.type(field("Gain now"), "abc");
    expect(field("Gain now")).toBeValid();
    await user.tab();
    expect(field("Gain now")).toHaveAccessibleDescription(/“abc” is not a number/);
    expect(screen.getByText("Put right what stands at “Gain now”.")).toBeVisible();
    await user.clear(field("Gain now"));
    await user.type(field("Gain now"), "60");
    await user.type(field("Peak seen"), "95");
    await user.clear(field("Reserve"));
    expect(screen.getByText(/^Type the reserve: .* 10 % is common practice, no source\.$/)).toBeVisible();
    await user.click(screen.getByRole("radio", { name: "how long it is at the limit" }));
    await user.type(field("At the limit"), "5");
    await user.clear(field("Wanted there"));
    expect(screen.getByText(/^Type how long it is wanted at the limit\./)).toBeVisible();
  });

  it("shows the caution in full beside the gain from 8 N·m up and where the torque is not known", async () => {
    const { user } = await renderAt(at, <RigScreen />, fill({ gainPercent: 60, torque: 7.9 }));
    const form = within(await screen.findByRole("form", { name: "Work out my gain" }));
    await user.click(form.getByRole("button", { name: /I have read the caution/ }));
    expect(form.queryByText(/from about 8 N·m can injure/)).toBeNull();
    expect(form.getByText(/Caution: strong wheels can injure hands/)).toBeVisible();
    await user.clear(field("Torque at most"));
    expect(form.getByText(/from about 8 N·m can injure.*common practice, without a source/)).toBeVisible();
    await user.type(field("Torque at most"), "8");
    expect(form.getByText(/from about 8 N·m can injure/)).toBeVisible();
    expect(form.queryByRole("button", { name: /I have read/ })).toBeNull();
  });

  it("asks for the gain where no record says it", async () => {
    const { user } = await renderAt(at, <Peek />);
    expect(await screen.findByText("Type the gain you drive with now, and what you saw.")).toBeVisible();
    await user.type(field("Gain now"), "50");
    await user.type(field("Peak seen"), "90");
    await user.click(screen.getByRole("button", { name: "Store this gain" }));
    await waitFor(() => expect(stored[0]?.wheel).toEqual({ gainPercent: 50 }));
  });
});
