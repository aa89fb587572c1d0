import { screen, waitFor } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, type Logbook, setTarget } from "#db";
import { TargetsScreen } from "../../../../src/screens/targets/TargetsScreen.tsx";
import { addSessions } from "../../../support/addSessions.ts";
import { renderAt } from "../../../support/renderAt.tsx";

const targets = <TargetsScreen />;
const lateEvenings = ["2026-11-11", "2026-11-14", "2026-11-18", "2026-11-21"];

/** Sessions of ten laps and one target of a best lap. */
function filled(evenings: readonly string[]) {
  return async (book: Logbook) => {
    const { comboId } = await addCombo(book, {
      car: { name: "club hatch" },
      track: { name: "Varnholt Ring" },
    });
    const laps = (number: number) =>
      Array.from({ length: 10 }, (_, lap) => 84_500 - 250 * number + ((lap * 37 + number * 11) % 40) * 10);
    await addSessions(
      book,
      comboId,
      evenings.map((date, number) => ({ date, laps: laps(number) })),
    );
    const [setOn, by] = ["2026-11-12", "2026-12-23"];
    await setTarget(book, { comboId, kind: "best", value: 83_000, by, setOn, setAt: Date.parse(setOn) });
  };
}
const chance = / by Wed 23 Dec 2026: .*chances? in 20\.$/;
const rests = /^From 4 sessions, and /;

describe("the practice that chances count on", () => {
  it("stands beside them, and they follow what is typed there; it outlives a reload", async () => {
    const { user, reload } = await renderAt("#/targets", targets, filled(lateEvenings));
    await screen.findByText(chance);
    await user.click(await screen.findByRole("button", { name: /^Steps, and what it rests on/ }));
    // Four sessions since 11 November, and four weeks to go.
    expect(await screen.findByText(rests)).toHaveTextContent(
      "From 4 sessions, and 8 more by then: 1.9 a week of 10 timed laps, as driven since Wed 11 Nov 2026.",
    );
    const often = screen.getByLabelText("Sessions a week");
    expect(often).toHaveValue("1.9");
    expect(screen.getByLabelText("Timed laps a session")).toHaveValue("10");
    await user.clear(often);
    await user.type(often, "3");
    // Nothing is left or pressed: it is stored when the typing rests.
    await waitFor(() =>
      expect(screen.getByText(rests)).toHaveTextContent(
        "From 4 sessions, and 12 more by then: 3.0 a week of 10 timed laps, as you count on.",
      ),
    );
    reload();
    await waitFor(() => expect(screen.getByLabelText("Sessions a week")).toHaveValue("3"));
    await user.click(await screen.findByRole("button", { name: "As driven since Wed 11 Nov 2026" }));
    await waitFor(() => expect(screen.getByLabelText("Sessions a week")).toHaveValue("1.9"));
    expect(screen.queryByRole("button", { name: "As driven since Wed 11 Nov 2026" })).not.toBeInTheDocument();
  });

  it("says at its field what is no practice, and keeps the chance there was", async () => {
    const { user } = await renderAt("#/targets", targets, filled(lateEvenings));
    const said = (await screen.findByText(chance)).textContent;
    const often = await screen.findByLabelText("Sessions a week");
    await user.clear(often);
    await user.type(often, "40{Enter}");
    expect(often).toHaveAccessibleDescription(/40 is out of range.*Until then 1\.9 counts\.$/);
    expect(screen.getByText(chance)).toHaveTextContent(said);
  });

  it("gives a chance where nothing was driven for six weeks", async () => {
    const long = ["2026-09-01", "2026-09-04", "2026-09-08", "2026-09-11"];
    const { user } = await renderAt("#/targets", targets, filled(long));
    expect(
      await screen.findByText("Nothing was driven in the last six weeks, so nothing is forecast."),
    ).toBeVisible();
    await user.type(await screen.findByLabelText("Sessions a week"), "2");
    await user.type(screen.getByLabelText("Timed laps a session"), "20");
    expect(await screen.findByText(chance)).toBeVisible();
    expect(screen.getByText("Your own figures: nothing was driven in the last six weeks.")).toBeVisible();
  });

  it("three sessions are little more than a guess, and that stands beside the chance", async () => {
    await renderAt("#/targets", targets, filled(lateEvenings.slice(1)));
    expect(await screen.findByText(chance)).toBeVisible();
    expect(screen.getByText("Little more than a guess: it rests on 3 sessions.")).toBeVisible();
  });
});
