import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, addLaps, addReference, addRig, addRigTest, addRun, editRun, type Logbook } from "#db";
import { useComparing } from "#state/comparing.ts";
import { ReviewScreen } from "../../../../src/screens/review/ReviewScreen.tsx";
import { addSessions } from "../../../support/addSessions.ts";
import { aGainTest } from "../../../support/aGainTest.ts";
import { aLap } from "../../../support/aLap.ts";
import { renderAt } from "../../../support/renderAt.tsx";

const even = (from: number) => Array.from({ length: 6 }, (_, lap) => from + lap * 17);

/** Two sessions of a combo and one of another; the later one has a run with other tyres. */
async function filled(book: Logbook) {
  const combo = async (track: string) =>
    (await addCombo(book, { car: { name: "club hatch" }, track: { name: track } })).comboId;
  const ring = await combo("Varnholt Ring");
  const ids = await addSessions(book, ring, [
    { date: "2026-11-02", laps: even(84_500) },
    { date: "2026-11-09", laps: even(84_000) },
  ]);
  const other = await addSessions(book, await combo("Tessemoor"), [
    { date: "2026-11-05", laps: even(56_000) },
  ]);
  const { runId } = await addRun(book, { sessionId: ids[1] ?? "" });
  await addLaps(book, { runId, laps: even(83_000).map((ms) => ({ id: book.newId(), lap: aLap(ms) })) });
  const rig = (gainPercent: number) =>
    addRig(book, {
      from: "2026-11-01",
      name: "",
      screen: {},
      view: {},
      wheel: { gainPercent, rotation: 540 },
      pedals: {},
      seat: {},
      note: "",
    });
  const [old, fresh] = [await rig(72), await rig(54)];
  await editRun(book, { runId, patch: { tyres: "soft", rigId: fresh.id } });
  const first = await book.tables.runs
    .where("[sessionId+n]")
    .equals([ids[0] ?? "", 1])
    .first();
  await editRun(book, { runId: first?.id ?? "", patch: { rigId: old.id } });
  await addReference(book, { comboId: ring, ms: 82_000, decimals: 3, source: "a friend" });
  return { sessions: [...ids, ...other], runs: [first?.id ?? "", runId] };
}

async function renderSides(hash: (made: Awaited<ReturnType<typeof filled>>) => string) {
  let made: Awaited<ReturnType<typeof filled>> | undefined;
  const shown = await renderAt("#/review/compare", <ReviewScreen />, async (book) => {
    made = await filled(book);
  });
  window.location.hash = hash(made as Awaited<ReturnType<typeof filled>>);
  return shown;
}

const figures = () => screen.findByRole("table", { name: "Figures of both" });
const rowOf = async (name: string) =>
  [...within(await figures()).getByRole("row", { name: new RegExp(`^${name}`) }).children].map(
    (cell) => cell.textContent,
  );

describe("two side by side", () => {
  it("runs: the earlier first, whichever was chosen first; strips, differences with the interval, tyres", async () => {
    await renderSides(({ runs }) => `#/review/compare?runs=${runs[1]},${runs[0]}`);
    expect(
      await screen.findByText(/^The later laps were faster by 1\.50 s, very likely at least 1\.4/),
    ).toBeVisible();
    expect(await rowOf("usual")).toEqual([
      "usual",
      "1:24.543",
      "1:23.043",
      expect.stringMatching(/^−1\.500 fasterbetween 1\.4\d and 1\.5\d s faster$/),
    ]);
    const earlier = within(screen.getByRole("region", { name: "Earlier" }));
    expect(earlier.getByRole("link", { name: "Run 1 of Mon 2 Nov 2026" })).toBeVisible();
    expect(earlier.getByRole("figure", { name: /6 laps, best 1:24\.500/ })).toBeVisible();
    const settings = within(screen.getByRole("table", { name: "Settings that differ" }));
    expect(
      [...settings.getByRole("row", { name: /^tyres/ }).children].map((cell) => cell.textContent),
    ).toEqual(["tyres", "—", "soft"]);
  });

  it("sessions: no interval from one or two runs, and it says what is lacking", async () => {
    await renderSides(({ sessions }) => `#/review/compare?sessions=${sessions[0]},${sessions[1]}`);
    expect(await screen.findByText("Faster or slower cannot be told yet")).toBeVisible();
    expect(screen.getByText(/^Each session needs 3 runs of 5 pace laps, and one has 1\./)).toBeVisible();
    expect(await rowOf("best")).toEqual([
      "best",
      "1:24.500",
      "1:23.000",
      "−1.500 fastersingle laps: no range",
    ]);
    expect((await rowOf("laps differ by"))[1]).toMatch(/^0\.\d\d s0\.\d\d s to 0\.\d\d s$/);
  });

  it("name each value of the rig that differs, draw the PB of the page, and say which kind of run either is", async () => {
    await renderSides(({ runs }) => `#/review/compare?runs=${runs[1]},${runs[0]}`);
    const settings = within(await screen.findByRole("table", { name: "Settings that differ" }));
    expect(
      [...settings.getByRole("row", { name: /^gain/ }).children].map((cell) => cell.textContent),
    ).toEqual(["gain", "72\u00a0%", "54\u00a0%"]);
    expect(settings.queryByRole("row", { name: /^rotation/ })).toBeNull();
    expect(screen.queryByText(/^Not the same kinds of run/)).toBeNull();
    const account = within(screen.getByRole("table", { name: "Where the time of both goes" }));
    expect(account.getAllByRole("row")[1]).toHaveTextContent(/^pace/);
  });

  it("sets one of the two beside another without beginning again", async () => {
    const { user } = await renderSides(({ runs }) => `#/review/compare?runs=${runs[1]},${runs[0]}`);
    await user.click(await screen.findByRole("button", { name: "Run 1 of Mon 2 Nov 2026 beside another" }));
    expect(useComparing.getState().first).toMatchObject({ kind: "run", name: "Run 1 of Mon 2 Nov 2026" });
    expect(window.location.hash).toMatch(/^#\/log\//);
    useComparing.getState().forget();
  });

  it("has the focus on its heading once the second is chosen from the list, which is gone", async () => {
    const { user } = await renderSides(() => "#/review");
    await user.click(await screen.findByRole("button", { name: "Compare two sessions" }));
    await user.click(screen.getByRole("button", { name: "Compare Mon 9 Nov 2026" }));
    await user.click(screen.getByRole("button", { name: "Compare Mon 9 Nov 2026 with Mon 2 Nov 2026" }));
    await waitFor(async () =>
      expect(
        await screen.findByRole("heading", { level: 1, name: "Two sessions side by side" }),
      ).toHaveFocus(),
    );
  });

  it("of two combos shows in percent what compares, and no difference of times", async () => {
    await renderSides(({ sessions }) => `#/review/compare?sessions=${sessions[0]},${sessions[2]}`);
    expect(await screen.findByText("Their lap times do not compare")).toBeVisible();
    const table = within(await figures());
    expect(table.queryByRole("columnheader", { name: "difference" })).toBeNull();
    expect(table.queryByText(/1:24/)).toBeNull();
    expect((await rowOf("laps differ by"))[1]).toMatch(/^0\.\d\d %$/);
  });

  it("says so where one of them is not there", async () => {
    await renderSides(({ runs }) => `#/review/compare?runs=${runs[0]},${runs[0]?.replace(/^./, "f")}`);
    expect(await screen.findByText(/^One of the two is not there/)).toBeVisible();
  });

  it("runs of a rig test that lasts: what they were driven with, and no figure, strip or difference", async () => {
    let ids: readonly string[] = [];
    await renderAt("#/review/compare", <ReviewScreen />, async (book) => {
      const { runs } = await filled(book);
      const comboId = (await book.tables.runs.get(runs[0] ?? ""))?.comboId ?? "";
      const { id } = await addRigTest(
        book,
        aGainTest(comboId, ["A", "B", "A", "B", "A", "B"], { question: "" }),
      );
      await editRun(book, { runId: runs[0] ?? "", patch: { rigTest: { id, pair: 1, side: "A" } } });
      await editRun(book, { runId: runs[1] ?? "", patch: { rigTest: { id, pair: 1, side: "B" } } });
      ids = runs;
    });
    window.location.hash = `#/review/compare?runs=${ids[0]},${ids[1]}`;
    expect(await screen.findByText("Told when the test is over.")).toBeVisible();
    expect(screen.queryByText(/faster|slower|%.*clean/)).not.toBeInTheDocument();
    expect(screen.queryByRole("table", { name: "Figures of both" })).not.toBeInTheDocument();
    expect(screen.queryByRole("figure")).not.toBeInTheDocument();
    const settings = within(screen.getByRole("table", { name: "Settings that differ" }));
    expect(
      [...settings.getByRole("row", { name: /^setting of the rig test/ }).children].map(
        (cell) => cell.textContent,
      ),
    ).toEqual(["setting of the rig test", "A, gain 72 %", "B, gain 54 %"]);
  });
});
