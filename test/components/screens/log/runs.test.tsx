import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, addLaps, addRun } from "#db";
import { aLap } from "../../../support/aLap.ts";
import {
  entryField,
  lapRows,
  openWith,
  pauseToRead,
  renderLog,
  runBlock,
} from "../../../support/logPage.tsx";
import { pick } from "../../../support/pick.ts";

type User = Awaited<ReturnType<typeof renderLog>>["user"];
const undo = () => screen.getByRole("button", { name: "Undo" });
const heading = (number: number) => runBlock(number).getByRole("heading");

async function change(user: User, number: number) {
  await user.click(await screen.findByRole("button", { name: `Change run ${number}` }));
  return within(await screen.findByRole("dialog", { name: `Run ${number}` }));
}

describe("the next run", () => {
  it("is at pace and full effort again after a drill, and the page says so", async () => {
    const { user } = await renderLog((book) => openWith(book, []));
    await entryField();
    await user.click(runBlock(1).getByRole("radio", { name: "drill" }));
    await waitFor(() => expect(heading(1)).toHaveTextContent("drill, full effort"));
    await user.click(runBlock(1).getByRole("radio", { name: "learning effort" }));
    await waitFor(() => expect(heading(1)).toHaveTextContent("drill, learning effort"));
    expect(runBlock(1).queryByText(/again after run/)).not.toBeInTheDocument();
    await user.type(await entryField(), "1:25.000{Enter}");
    await user.click(await screen.findByRole("button", { name: "End run" }));
    await waitFor(() => expect(heading(2)).toHaveTextContent("pace, full effort · dry"));
    expect(
      runBlock(2).getByText(
        "Pace and full effort again after run 1 (drill, learning effort). The other settings stay.",
      ),
    ).toBeVisible();
  });

  it("has the settings of the run before, and what changed is one tap", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700]));
    const dialog = await change(user, 1);
    await user.click(dialog.getByRole("radio", { name: "brisk" }));
    await user.type(dialog.getByLabelText("Tyres"), "soft");
    await user.click(dialog.getByRole("button", { name: "Done" }));
    await user.click(screen.getByRole("button", { name: "End run" }));
    await waitFor(() => expect(heading(2)).toHaveTextContent("pace, full effort · dry · soft"));
    await waitFor(async () => expect(await entryField()).toHaveFocus());
    await user.click(runBlock(2).getByRole("radio", { name: "drill" }));
    await waitFor(() => expect(heading(2)).toHaveTextContent("drill, full effort · dry · soft"));
    await user.click(runBlock(2).getByRole("radio", { name: "damp" }));
    await waitFor(() => expect(heading(2)).toHaveTextContent("drill, full effort · damp · soft"));
    expect(heading(1)).toHaveTextContent("pace, brisk · dry · soft");
    await user.type(await entryField(), "1:25.000{Enter}");
    await waitFor(() => expect(runBlock(2).queryByRole("radio")).not.toBeInTheDocument());
  });
});

describe("a forgotten end of a run", () => {
  const question = "9 minutes between these laps. Begin a new run here?";
  /** Three laps as they were driven, then nine minutes of nothing. */
  async function afterAPause() {
    const { user, clock } = await renderLog((book) => openWith(book, []));
    const pass = (ms: number) => clock.pass(ms);
    for (const [index, time] of ["1:24.900", "1:24.700", "1:24.800"].entries()) {
      await user.type(await entryField(), `${time}{Enter}`);
      await waitFor(() => expect(lapRows(1)).toHaveLength(index + 1));
      pass(index < 2 ? 85_000 : 9 * 60_000);
    }
    return { user, pass };
  }

  it("is offered as a new run at the lap after the gap, in one tap and with undo", async () => {
    const { user, pass } = await afterAPause();
    expect(screen.queryByText(question)).not.toBeInTheDocument();
    await user.type(await entryField(), "1:25.000{Enter}");
    await screen.findByText(question);
    pass(85_000);
    await user.type(await entryField(), "1:25.100{Enter}");
    await waitFor(() => expect(lapRows(1)).toHaveLength(5));
    await user.click(screen.getByRole("button", { name: "Begin a new run here" }));
    await waitFor(() =>
      expect(lapRows(2).map((cells) => cells[1])).toEqual(["Edit lap 1: 1:25.000", "Edit lap 2: 1:25.100"]),
    );
    expect(screen.queryByText(question)).not.toBeInTheDocument();
    await user.click(undo());
    await waitFor(() => expect(lapRows(1)).toHaveLength(5));
    expect(screen.queryByText(question)).not.toBeInTheDocument();
  });

  it("is not asked about again once the driver has said it is the same run", async () => {
    const { user, pass } = await afterAPause();
    await user.type(await entryField(), "1:25.000{Enter}");
    await screen.findByText(question);
    await user.click(screen.getByRole("button", { name: "Same run" }));
    pass(85_000);
    await user.type(await entryField(), "1:25.100{Enter}");
    await waitFor(() => expect(lapRows(1)).toHaveLength(5));
    expect(screen.queryByText(question)).not.toBeInTheDocument();
  });

  it("is not asked about for laps that were pasted after the gap", async () => {
    const { user } = await afterAPause();
    await user.click(await entryField());
    await user.paste("1:25.000\n1:25.100");
    await user.click(await screen.findByRole("button", { name: "Add 2 laps" }));
    await waitFor(() => expect(lapRows(1)).toHaveLength(5));
    expect(screen.queryByText(question)).not.toBeInTheDocument();
  });
});

describe("what a run says", () => {
  it("stays to be read under its head when the next run has its first lap", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_900, 84_700, 84_800]));
    await screen.findByRole("region", { name: "What run 1 says" });
    const sentence = "1:24.700 is your PB here, 0.200 s faster than the first, 1:24.900.";
    expect(runBlock(1).queryByText(sentence)).not.toBeInTheDocument();
    await user.click(screen.getByRole("button", { name: "End run" }));
    await waitFor(() => expect(heading(2)).toBeVisible());
    expect(runBlock(1).queryByText(sentence)).not.toBeInTheDocument();
    await user.type(await entryField(), "1:25.000{Enter}");
    await screen.findByRole("region", { name: "What run 2 says" });
    expect(runBlock(1).getByText(sentence)).toBeVisible();
    await user.click(screen.getByRole("button", { name: "End run" }));
    await waitFor(() => expect(heading(3)).toBeVisible());
    await user.type(await entryField(), "1:25.100{Enter}");
    await screen.findByRole("region", { name: "What run 3 says" });
    expect(runBlock(1).queryByText(sentence)).not.toBeInTheDocument();
    await user.click(runBlock(1).getByRole("button", { name: "Show laps" }));
    expect(runBlock(1).getByText(sentence)).toBeVisible();
  });
});

describe("the settings of a run", () => {
  it("are stored at once, also when the dialog is left by Escape", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700]));
    const dialog = await change(user, 1);
    await user.type(dialog.getByLabelText("Note on the run"), "kerb at 7");
    await user.keyboard("{Escape}");
    await waitFor(() => expect(runBlock(1).getByText("kerb at 7")).toBeVisible());
    const again = await change(user, 1);
    expect(again.getByLabelText("Note on the run")).toHaveValue("kerb at 7");
    await user.click(again.getByRole("button", { name: "Done" }));
  });

  it("say what is no whole number, and keep it to be mended", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700]));
    const dialog = await change(user, 1);
    const driven = dialog.getByLabelText("Laps driven, if not all are written");
    await user.type(driven, "8.5");
    expect(driven).toHaveAccessibleDescription(/“8\.5” is not a whole number up to 9999/);
    await user.click(dialog.getByRole("button", { name: "Done" }));
    const again = await change(user, 1);
    const field = again.getByLabelText("Laps driven, if not all are written");
    await waitFor(() => expect(field).toHaveValue("8.5"));
    await user.clear(field);
    await user.type(field, "8");
    await user.click(again.getByRole("button", { name: "Done" }));
    expect(await runBlock(1).findByText(/^1 of 8/)).toBeVisible();
  });

  it("put a race's grid and finish into its heading", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700]));
    const dialog = await change(user, 1);
    await user.click(dialog.getByRole("radio", { name: "race" }));
    await user.type(await dialog.findByLabelText("Grid place"), "5");
    await user.type(dialog.getByLabelText("Finish place"), "3");
    await user.click(dialog.getByRole("button", { name: "Done" }));
    await waitFor(() => expect(heading(1)).toHaveTextContent("race · dry · grid 5 · finish 3"));
  });

  it("make a run a guest's: it enters no figure and no PB", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700]));
    await entryField();
    expect(lapRows(1)[0]?.at(-1)).toBe("PB");
    const dialog = await change(user, 1);
    await user.click(dialog.getByRole("checkbox", { name: /Someone else is driving/ }));
    await user.type(await dialog.findByLabelText("Their name, if wanted"), "Jo");
    await user.click(dialog.getByRole("button", { name: "Done" }));
    await waitFor(() => expect(heading(1)).toHaveTextContent("Jo driving"));
    expect(lapRows(1)[0]?.at(-1)).toBe("");
    expect(screen.getByRole("region", { name: "What run 1 says" })).toHaveTextContent(
      "Someone else drove: this run counts in no figure of yours.",
    );
  });
});

describe("putting a run right", () => {
  it("moves several of its laps to a new run, all back by Undo", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700, 84_900, 84_800]));
    const dialog = await change(user, 1);
    await user.click(dialog.getByRole("button", { name: /^Laps that belong elsewhere/ }));
    await user.type(dialog.getByLabelText("First lap to move"), "4");
    expect(dialog.getByLabelText("First lap to move")).toHaveAccessibleDescription(
      "Write a lap from 1 to 3.",
    );
    await user.clear(dialog.getByLabelText("First lap to move"));
    await user.type(dialog.getByLabelText("First lap to move"), "2");
    pick(dialog.getByLabelText("Where to"), "a new run of this session");
    await user.click(dialog.getByRole("button", { name: "Move 2 laps" }));
    await waitFor(() => expect(lapRows(2)).toHaveLength(2));
    await user.click(undo());
    await waitFor(() => expect(lapRows(1)).toHaveLength(3));
  });

  it("moves laps to another combo", async () => {
    const { user } = await renderLog(async (book) => {
      await addCombo(book, { car: { name: "endurance trainer" }, track: { name: "Tessemoor" } });
      await openWith(book, [84_700, 84_900]);
    });
    const dialog = await change(user, 1);
    await user.click(dialog.getByRole("button", { name: /^Laps that belong elsewhere/ }));
    await user.type(dialog.getByLabelText("First lap to move"), "2");
    pick(
      dialog.getByLabelText("Where to"),
      await dialog.findByRole("option", { name: "Tessemoor · endurance trainer, same date" }),
    );
    await user.click(dialog.getByRole("button", { name: "Move 1 lap" }));
    await waitFor(() => expect(lapRows(1)).toHaveLength(1));
    expect(screen.getAllByText("1 lap moved.")[0]).toBeVisible();
  });

  it("splits the session at a run, and the open one goes on as the second", async () => {
    const { user } = await renderLog(async (book) => {
      const { sessionId } = await openWith(book, [84_700]);
      const { runId } = await addRun(book, { sessionId });
      await addLaps(book, { runId, laps: [{ id: book.newId(), lap: aLap(84_300) }] });
    });
    const dialog = await change(user, 2);
    await user.click(dialog.getByRole("button", { name: /^Wrong combo or session/ }));
    await user.click(dialog.getByRole("button", { name: "Split the session here" }));
    await waitFor(() =>
      expect(lapRows(1).map(([, time]) => time)).toEqual([expect.stringContaining("1:24.300")]),
    );
    expect(screen.queryByRole("region", { name: "Run 2" })).not.toBeInTheDocument();
    expect(screen.getAllByText("Session split.")[0]).toBeVisible();
  });

  it("splits the session at a lap of its only run, and Undo makes it one again", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700, 84_500, 84_300]));
    const dialog = await change(user, 1);
    await user.click(dialog.getByRole("button", { name: /^Wrong combo or session/ }));
    const first = dialog.getByLabelText("First lap of the new session");
    expect(dialog.getByRole("button", { name: "Split the session here" })).toBeDisabled();
    await user.type(first, "1");
    expect(first).toHaveAccessibleDescription(/Write a lap from 2 to 3\./);
    await user.clear(first);
    await user.type(first, "3");
    await user.click(dialog.getByRole("button", { name: "Split the session at lap 3" }));
    await waitFor(() =>
      expect(lapRows(1).map(([, time]) => time)).toEqual([expect.stringContaining("1:24.300")]),
    );
    await user.click(undo());
    await waitFor(() => expect(lapRows(1)).toHaveLength(3));
  });

  it("deletes a run, and Undo brings it back with its laps", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700]));
    const dialog = await change(user, 1);
    await user.click(dialog.getByRole("button", { name: "Delete this run" }));
    expect(await screen.findByRole("button", { name: "Begin a run" })).toBeVisible();
    await user.click(undo());
    await waitFor(() => expect(lapRows(1)).toHaveLength(1));
  });
});

/** The form of a run written as a whole, opened from the page of the session. */
async function summaryDialog(user: Awaited<ReturnType<typeof renderLog>>["user"]) {
  await entryField();
  await user.click(screen.getByRole("button", { name: "Summary run" }));
  return within(await screen.findByRole("dialog", { name: "A run as a summary" }));
}

describe("a summary run", () => {
  it("says at its fields what cannot be, and is then one line of the ledger that can be edited", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700]));
    const dialog = await summaryDialog(user);
    const off = dialog.getByLabelText("Laps with an off, a spin or a contact");
    await user.type(dialog.getByLabelText("Best"), "1:24.9");
    await user.type(dialog.getByLabelText("Usual"), "1:24.2");
    await user.type(off, "9");
    await user.click(dialog.getByRole("button", { name: "Store the run" }));
    expect(dialog.getByLabelText("Laps driven")).toHaveAccessibleDescription(/Say how many laps/);
    expect(dialog.getByLabelText("Laps driven")).toHaveFocus();
    expect(dialog.getByLabelText("Usual")).toHaveAccessibleDescription(/cannot be faster than the best/);
    expect(off).toHaveAccessibleDescription(/more laps off than laps driven/);
    await user.type(dialog.getByLabelText("Laps driven"), "8");
    await user.clear(dialog.getByLabelText("Usual"));
    await user.type(dialog.getByLabelText("Usual"), "1:25.6");
    await user.clear(off);
    await user.type(off, "1{Enter}");
    const second = within(await screen.findByRole("region", { name: "Run 2" }));
    expect(second.getByText("summary: 8 laps · best 1:24.9 · usual 1:25.6 · 1 off")).toBeVisible();

    await user.click(second.getByRole("button", { name: "Edit the figures of run 2" }));
    const again = within(await screen.findByRole("dialog", { name: "A run as a summary" }));
    expect(again.getByLabelText("Usual")).toHaveValue("1:25.6");
    await user.clear(again.getByLabelText("Best"));
    await user.type(again.getByLabelText("Best"), "1:24.75{Enter}");
    expect(await second.findByText("summary: 8 laps · best 1:24.75 · usual 1:25.6 · 1 off")).toBeVisible();
  });

  it("asks about a usual lap alone that would need a lap far under the PB", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700]));
    const dialog = await summaryDialog(user);
    await user.type(dialog.getByLabelText("Laps driven"), "8");
    await user.type(dialog.getByLabelText("Usual"), "0:43.0{Enter}");
    expect(await dialog.findByRole("alert")).toHaveTextContent(/would beat your PB, 1:24\.700, by 49/);
  });

  it("is judged like laps: a best or a usual far from what is known wants a second press", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700]));
    const dialog = await summaryDialog(user);
    await user.type(dialog.getByLabelText("Laps driven"), "8");
    await user.type(dialog.getByLabelText("Best"), "1:04.9");
    await user.type(dialog.getByLabelText("Usual"), "13:23.456{Enter}");
    const asked = await dialog.findByRole("alert");
    expect(asked).toHaveTextContent(/^1:04\.9 would beat your PB, 1:24\.700, by 23\.4 %\./);
    expect(asked).toHaveTextContent(/13:23\.456 is more than 3 times/);
    await pauseToRead();
    await user.click(dialog.getByRole("button", { name: "Store the run" }));
    const second = within(await screen.findByRole("region", { name: "Run 2" }));
    expect(second.getByText("summary: 8 laps · best 1:04.9 · usual 13:23.456")).toBeVisible();
    expect(await screen.findByText("24700 is enough for 1:24.700")).toBeVisible();
  });

  it("leaves the entry line ready for the next run", async () => {
    const { user } = await renderLog((book) => openWith(book, []));
    const dialog = await summaryDialog(user);
    await user.type(dialog.getByLabelText("Laps driven"), "8");
    await user.type(dialog.getByLabelText("Best"), "1:24.9{Enter}");
    await waitFor(() => expect(heading(2)).toHaveTextContent("pace, full effort"));
    expect(runBlock(1).getByText("summary: 8 laps · best 1:24.9")).toBeVisible();
    expect(screen.queryByRole("button", { name: "Begin a run" })).not.toBeInTheDocument();
    await user.type(await entryField(), "1:25.000{Enter}");
    await waitFor(() => expect(lapRows(2)).toHaveLength(1));
  });

  it("is taken back as a whole", async () => {
    const { user } = await renderLog((book) => openWith(book, []));
    const dialog = await summaryDialog(user);
    await user.type(dialog.getByLabelText("Laps driven"), "8{Enter}");
    await waitFor(() => expect(heading(2)).toBeVisible());
    await user.click(undo());
    await waitFor(() => expect(screen.queryByRole("region", { name: "Run 2" })).not.toBeInTheDocument());
    expect(runBlock(1).getByText("no laps yet")).toBeVisible();
    expect(await entryField()).toBeVisible();
  });
});
