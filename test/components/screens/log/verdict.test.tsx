import { fireEvent, screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addRun, editRun, type Logbook, setTarget } from "#db";
import { addSessions } from "../../../support/addSessions.ts";
import { aLap } from "../../../support/aLap.ts";
import { aCombo, entryField, openWith, renderLog, runBlock } from "../../../support/logPage.tsx";

/** Laps about a usual one. */
const laps = (usual: number) => [-200, 100, -50, 150, 0].map((ms) => usual + ms);
const days = ["2026-11-01", "2026-11-05", "2026-11-09", "2026-11-13", "2026-11-17", "2026-11-21"];

/** A driver whose level is 1:24.0, with a run each on six evenings, and tonight an ended one with an empty one behind it. */
async function betweenRuns(book: Logbook, tonight: Parameters<typeof openWith>[1]) {
  const comboId = await aCombo(book);
  await addSessions(
    book,
    comboId,
    days.map((date, index) => ({ date, laps: laps(84_000 + (index % 2 === 0 ? -100 : 100)) })),
  );
  const open = await openWith(book, tonight, comboId);
  await addRun(book, { sessionId: open.sessionId });
  return open;
}

const verdict = async (run = 1) =>
  within(await screen.findByRole("region", { name: `Verdict of run ${run}` }));
/** The word, once it has been worked out. */
const word = async (run = 1) => {
  await waitFor(async () => expect((await verdict(run)).getByRole("heading")).toHaveTextContent(/\w/));
  return (await verdict(run)).getByRole("heading").textContent;
};
const bigView = () => screen.findByRole("dialog", { name: "Big view" });

describe("the verdict between two runs", () => {
  it("is a word, the distance from the level, and a sentence counted from one's own runs", async () => {
    await renderLog((book) => betweenRuns(book, laps(82_500)));
    expect(await word()).toBe("faster");
    const said = await verdict();
    expect(said.getByText(/^−1\.\d\d s$/)).toBeVisible();
    expect(said.getByText(/^to your level, 1:2[34]\.\d\d$/)).toBeVisible();
    expect(
      said.getByText("Very likely more than chance: none of your last 6 runs was so far under your level."),
    ).toBeVisible();
    expect(said.getByText(/is a new PB/)).toBeVisible();
    expect(said.getByText("5 of 5")).toBeVisible();
    expect(said.getByText("Next:")).toBeVisible();
    expect(said.getByRole("figure", { name: /^Run 1: 5 laps/ })).toBeVisible();
  });

  it("names the target that a new best is the first to reach, and no other", async () => {
    await renderLog(async (book) => {
      const { comboId } = await betweenRuns(book, laps(82_500));
      for (const value of [83_000, 82_500, 82_000])
        await setTarget(book, { comboId, kind: "best", value, setOn: "2026-11-20" });
    });
    const best = (await verdict()).getByText(/is a new PB/);
    expect(best).toHaveTextContent(/^1:22\.300 is a new PB, .* It reaches your target of 1:22\.500\.$/);
  });

  it("is read out once, where it stands", async () => {
    await renderLog((book) => betweenRuns(book, laps(84_000)));
    await word();
    expect((await verdict()).getAllByRole("status").map(({ textContent }) => textContent)).toContainEqual(
      expect.stringMatching(/^Run 1: (as usual|steady), [−+±]0\.\d\d s to your level/),
    );
  });

  it("keeps its place while it is worked out, and says nothing before", async () => {
    const { user } = await renderLog((book) => openWith(book, laps(84_000)));
    await user.click(await screen.findByRole("button", { name: "End run" }));
    const region = await screen.findByRole("region", { name: "Verdict of run 1" });
    expect(within(region).getByRole("heading").textContent?.trim()).toMatch(/^(5 of 5)?$/);
    expect(await word()).toBe("5 of 5");
    expect(within(region).getByText("clean", { selector: "p" })).toBeVisible();
    expect(within(region).getByText(/^The first laps here/)).toBeVisible();
  });

  it("names the laps that made a run untidy, and tells nobody faster", async () => {
    const spun = [84_000, 84_100, 84_200].map((ms) => ({
      ms: ms + 5000,
      remarks: [{ kind: "spin" as const }],
    }));
    await renderLog((book) => betweenRuns(book, [...spun, ...laps(82_000)]));
    expect(await word()).toBe("untidy");
    expect((await verdict()).getByText("3 of 8")).toBeVisible();
    expect((await verdict()).getByText("Laps 1, 2 and 3 were lost or had a mistake.")).toBeVisible();
  });

  it("stands until the first lap of the next run is typed, which needs no other key than its digits", async () => {
    const { user } = await renderLog((book) => betweenRuns(book, laps(84_000)));
    await word();
    await waitFor(async () => expect(await entryField()).toHaveFocus());
    await user.keyboard("1:24.1{Enter}");
    await waitFor(() =>
      expect(screen.queryByRole("region", { name: "Verdict of run 1" })).not.toBeInTheDocument(),
    );
    expect(runBlock(2).getAllByRole("row")).toHaveLength(2);
  });

  it("is not given for a run that somebody else drove", async () => {
    await renderLog(async (book) => {
      const { runId } = await betweenRuns(book, laps(82_500));
      await editRun(book, { runId, patch: { guest: "Jo" } });
    });
    expect(await word()).toBe("5 of 5");
    expect(
      (await verdict()).getByText("Someone else drove: this run counts in no figure of yours."),
    ).toBeVisible();
  });

  it("asks for a break after the run that made an hour at the wheel full, not after the one behind it", async () => {
    const hour = Array.from({ length: 43 }, () => aLap(84_000));
    const { user } = await renderLog((book) => betweenRuns(book, hour));
    expect(await screen.findByText("An hour at the wheel: time for a break.")).toBeVisible();
    await user.type(await entryField(), "1:24.1{Enter}");
    await waitFor(() => expect(runBlock(2).getAllByRole("row")).toHaveLength(2));
    await user.click(screen.getByRole("button", { name: "End run" }));
    await screen.findByRole("region", { name: "Verdict of run 2" });
    expect(screen.queryByText(/time for a break/)).not.toBeInTheDocument();
  });
});

describe("the big view", () => {
  it("shows the verdict and the next run, and Escape leads back to the entry line", async () => {
    const { user } = await renderLog((book) => betweenRuns(book, laps(82_500)));
    await word();
    await user.click(screen.getByRole("button", { name: "Big view" }));
    const view = within(await bigView());
    expect(view.getByRole("heading", { name: "faster" })).toBeVisible();
    expect(view.getByText(/^−1\.\d\d s$/)).toBeVisible();
    expect(view.getByText(/is a new PB/)).toBeVisible();
    await waitFor(() => expect(view.getByRole("button", { name: "Back to the ledger" })).toHaveFocus());
    await user.keyboard("{Escape}");
    await waitFor(() => expect(screen.queryByRole("dialog", { name: "Big view" })).not.toBeInTheDocument());
    await expect.poll(() => document.activeElement).toBe(await entryField());
    expect(await entryField()).toHaveValue("");
  });

  it("ends at the first key, which is typed in the entry line", async () => {
    const { user } = await renderLog((book) => betweenRuns(book, laps(84_000)));
    await word();
    await user.click(screen.getByRole("button", { name: "Big view" }));
    await bigView();
    await user.keyboard("1:24.3");
    expect(screen.queryByRole("dialog", { name: "Big view" })).not.toBeInTheDocument();
    expect(await entryField()).toHaveValue("1:24.3");
  });

  it("ends at Enter and at a tap, which type nothing", async () => {
    const { user } = await renderLog((book) => betweenRuns(book, laps(84_000)));
    await word();
    for (const leave of [() => user.keyboard("{Enter}"), async () => user.click(await bigView())]) {
      await user.click(screen.getByRole("button", { name: "Big view" }));
      await bigView();
      await leave();
      await waitFor(() => expect(screen.queryByRole("dialog", { name: "Big view" })).not.toBeInTheDocument());
      expect(await entryField()).toHaveValue("");
    }
  });

  it("stays while Shift alone is pressed", async () => {
    const { user } = await renderLog((book) => betweenRuns(book, laps(84_000)));
    await user.click(await screen.findByRole("button", { name: "Big view" }));
    fireEvent.keyDown(await bigView(), { key: "Shift" });
    expect(await bigView()).toBeVisible();
  });

  it("only counts laps while a run goes on", async () => {
    const { user } = await renderLog((book) =>
      openWith(book, [84_000, { ms: 90_000, remarks: [{ kind: "spin" }] }]),
    );
    await user.click(await screen.findByRole("button", { name: "Big view" }));
    const view = within(await bigView());
    expect(view.getByRole("heading", { name: "1 of 2" })).toBeVisible();
    expect(view.getByText("so far")).toBeVisible();
    expect(view.queryByText(/PB here|Next/)).not.toBeInTheDocument();
  });
});
