import { screen, waitFor, within } from "@testing-library/react";
import { expect, it } from "vitest";
import { dump, openLogbook } from "#db";
import { lapsInOrder } from "#domain";
import { useDevice } from "#state/device.ts";
import { DataScreen } from "../../../../src/screens/data/DataScreen.tsx";
import { pick } from "../../../support/pick.ts";
import { type Rendered, renderAt } from "../../../support/renderAt.tsx";

const oldTimes = [
  "Day;Auto;Course;Time;What happened",
  "3.4.2026;club hatch;Varnholt Ring;1:24,9;",
  "3.4.2026;club hatch;Varnholt Ring;1:24,512;off at 5",
  "10.4.2026;club hatch;Varnholt Ring;rubbish;",
  "12.4.2026;formula trainer;Varnholt Ring, short;58,25;",
].join("\r\n");

async function choose(user: Rendered["user"], text: string, name = "old times.csv") {
  await user.click(await screen.findByRole("button", { name: /^Choose (a|another) table/ }));
  const field = document.querySelector<HTMLInputElement>('input[type="file"]');
  if (field === null) throw new Error("no file dialog was opened");
  await user.upload(field, new File([text], name, { type: "text/csv" }));
}

async function rows({ surroundings }: Rendered) {
  const book = await openLogbook({ name: useDevice.getState().logbook ?? "", ...surroundings });
  const all = await dump(book);
  book.close();
  return all;
}

const part = () => screen.getByRole("region", { name: "Import laps" });

/** The button waits until the book has been asked what is in it already. */
async function press(user: Awaited<ReturnType<typeof renderAt>>["user"], name: string) {
  const button = () => within(part()).findByRole("button", { name });
  await waitFor(async () => expect(await button()).toBeEnabled());
  await user.click(await button());
}

it("turns a spreadsheet of old times into sessions by date and combo, and takes them back as a whole", async () => {
  const page = await renderAt("#/data", <DataScreen />);
  const { user } = page;
  await choose(user, oldTimes);
  expect(
    await within(part()).findByText("3 laps in 2 sessions, Fri 3 Apr 2026 to Sun 12 Apr 2026."),
  ).toBeVisible();
  expect(within(part()).getByRole("combobox", { name: "Between the cells" })).toHaveDisplayValue("semicolon");
  expect(within(part()).getByRole("combobox", { name: "Decimal sign" })).toHaveDisplayValue("comma");
  expect(within(part()).getByRole("combobox", { name: "Order of dates" })).toHaveAccessibleDescription(
    "“3.4.2026” is read as Fri 3 Apr 2026.",
  );
  expect(
    await within(part()).findByText(
      /New in this logbook: cars “club hatch”, “formula trainer”; track “Varnholt Ring”/,
    ),
  ).toBeVisible();
  const unread = within(part()).getByRole("table", { name: "Not read: these rows stay out" });
  expect(within(unread).getByRole("row", { name: /^4 / })).toHaveTextContent("rubbish");

  pick(within(part()).getByRole("combobox", { name: "What “What happened” holds" }), "note on the lap");
  const laps = within(part()).getByRole("table", { name: "Read as" });
  expect(await within(laps).findByRole("row", { name: /1:24\.512 .*off at 5/ })).toBeVisible();

  await user.click(within(part()).getByRole("button", { name: "Import 3 laps" }));
  await screen.findAllByText("3 laps imported in 2 sessions.");
  const stored = await rows(page);
  expect(stored.sessions.map(({ date, isTimeOfDayKnown }) => [date, isTimeOfDayKnown])).toEqual([
    ["2026-04-03", false],
    ["2026-04-12", false],
  ]);
  expect(
    stored.runs.flatMap(lapsInOrder).map(({ ms, decimals, source, note }) => [ms, decimals, source, note]),
  ).toEqual([
    [84_900, 1, "imported", undefined],
    [84_512, 3, "imported", "off at 5"],
    [58_250, 2, "imported", undefined],
  ]);
  expect(stored.layouts.map(({ name }) => name)).toEqual(["", "short"]);

  await user.click(screen.getByRole("button", { name: "Undo" }));
  await screen.findAllByText(/^Undone: 3 laps imported/);
  expect((await rows(page)).sessions.every(({ deletedAt }) => deletedAt !== undefined)).toBe(true);
});

it("leaves out laps that are there when the same file is chosen again, and knows its columns", async () => {
  const page = await renderAt("#/data", <DataScreen />);
  const { user } = page;
  await choose(user, oldTimes);
  pick(
    await within(part()).findByRole("combobox", { name: "What “What happened” holds" }),
    "note on the lap",
  );
  await press(user, "Import 3 laps");
  await screen.findAllByText("3 laps imported in 2 sessions.");
  await choose(user, oldTimes);
  expect(await within(part()).findByText(/3 laps are in this logbook already/)).toBeVisible();
  expect(within(part()).getByRole("combobox", { name: "What “What happened” holds" })).toHaveDisplayValue(
    "note on the lap",
  );
  expect(within(part()).getByRole("button", { name: "Nothing to import" })).toBeDisabled();
  await user.click(within(part()).getByRole("checkbox", { name: /a second time/ }));
  expect(within(part()).getByRole("button", { name: "Import 3 laps" })).toBeEnabled();
});

it("asks for the order of dates that may be read both ways", async () => {
  const { user } = await renderAt("#/data", <DataScreen />);
  await choose(user, "date,car,track,time\n3/4/2026,club hatch,Varnholt Ring,1:23.456\n");
  const order = await within(part()).findByRole("combobox", { name: "Order of dates" });
  expect(order).toHaveAccessibleDescription(
    "The dates do not tell their order: “3/4/2026” may be Fri 3 Apr 2026 or Wed 4 Mar 2026.",
  );
  expect(within(part()).getByRole("button", { name: "Nothing to import" })).toBeDisabled();
  pick(order, "month, day, year");
  expect(await within(part()).findByText("1 lap in 1 session, Wed 4 Mar 2026.")).toBeVisible();
});

it("reads a pasted column of times with car, track and date said once", async () => {
  const page = await renderAt("#/data", <DataScreen />);
  const { user } = page;
  await user.click(await screen.findByRole("button", { name: /^Paste a table/ }));
  await user.type(screen.getByRole("textbox", { name: "Table" }), "1:23.4{Enter}1:23.9");
  await user.click(screen.getByRole("button", { name: "Read the pasted table" }));
  await user.type(await screen.findByRole("combobox", { name: "Car of all laps" }), "club hatch");
  await user.type(screen.getByRole("combobox", { name: "Track layout of all laps" }), "Varnholt Ring");
  const date = screen.getByRole("textbox", { name: "Date of all laps" });
  await user.type(date, "3/4/2026");
  expect(date).toBeInvalid();
  await user.clear(date);
  await user.type(date, "14 Oct 2026");
  await user.click(await screen.findByRole("button", { name: "Import 2 laps" }));
  await screen.findAllByText("2 laps imported in 1 session.");
  expect((await rows(page)).sessions[0]?.date).toBe("2026-10-14");
});

it("says what is wrong with a file that is no table, and changes nothing", async () => {
  const { user } = await renderAt("#/data", <DataScreen />);
  await choose(user, "", "empty.csv");
  expect(await screen.findByText(/empty\.csv/)).toBeVisible();
  expect(screen.getByText(/was not read/).closest("p")).toHaveTextContent("The file is empty.");
});

it("names its own table of targets instead of importing it, chosen or pasted", async () => {
  const { user } = await renderAt("#/data", <DataScreen />);
  const targets =
    "car,track,layout,figure,laps,wanted,unit,by,set on,at the start,one thing to do,archived\r\n" +
    "club hatch,Varnholt Ring,,best lap,,82.5,s,2026-04-30,2026-03-10,83.4,,\r\n";
  await choose(user, targets, "targets.csv");
  const refusal = () =>
    within(part())
      .getByText(/was not read/)
      .closest("p");
  expect(await within(part()).findByText(/targets\.csv/)).toBeVisible();
  expect(refusal()).toHaveTextContent(
    "This is Lap Ledger’s own export, the table of targets. It cannot be read back as laps.",
  );
  await user.click(screen.getByRole("button", { name: /^Paste a table/ }));
  await user.click(screen.getByRole("textbox", { name: "Table" }));
  await user.paste(targets);
  await user.click(screen.getByRole("button", { name: "Read the pasted table" }));
  expect(refusal()).toHaveTextContent(/^The pasted text was not read\. This is Lap Ledger’s own export/);
  expect(screen.getByRole("textbox", { name: "Table" })).not.toHaveValue("");
});

it("asks of each name with other accents whether it is the old one, before anything is imported", async () => {
  const page = await renderAt("#/data", <DataScreen />);
  const { user } = page;
  await choose(user, "date,car,track,time\n2026-04-03,Café GT,Varnholt Ring,1:24.9\n");
  await press(user, "Import 1 lap");
  await screen.findAllByText("1 lap imported in 1 session.");
  await choose(
    user,
    "date,car,track,time\n2026-04-10,Cafe GT,Várnholt Ring,1:24.1\n2026-04-10,CAFE gt,Várnholt Ring,1:24.2\n",
  );
  const car = await within(part()).findByRole("group", { name: "Is the car “Cafe GT” your “Café GT”?" });
  const track = within(part()).getByRole("group", {
    name: "Is the track “Várnholt Ring” your “Varnholt Ring”?",
  });
  expect(within(part()).getByRole("button", { name: "Say first which names are the same" })).toBeDisabled();
  await user.click(within(car).getByRole("radio", { name: "it is" }));
  await user.click(within(track).getByRole("radio", { name: "a new track" }));
  await press(user, "Import 2 laps");
  await screen.findAllByText("2 laps imported in 1 session.");
  const stored = await rows(page);
  expect(stored.cars.map(({ name }) => name)).toEqual(["Café GT"]);
  expect(stored.tracks.map(({ name }) => name).sort()).toEqual(["Varnholt Ring", "Várnholt Ring"]);
});

const withOdd = [
  "date,car,track,time,remarks",
  ...["1:24.9", "1:24.512", "1:25.1", "1:24.7", "1:24.8"].map(
    (time) => `2026-04-03,club hatch,Varnholt Ring,${time},`,
  ),
  "2026-04-03,club hatch,Varnholt Ring,200:00.0,f",
  "2026-04-10,club hatch,Varnholt Ring,13:23.456,",
].join("\n");

it("points at laps far from what is usual, counts them, and leaves it to the driver", async () => {
  const page = await renderAt("#/data", <DataScreen />);
  const { user } = page;
  await choose(user, withOdd);
  expect(await within(part()).findByText(/2 laps lie far from what is usual\./)).toBeVisible();
  const table = within(part()).getByRole("table", { name: "Far from what is usual: look at these" });
  expect(within(table).getByRole("row", { name: /^7 / })).toHaveTextContent(
    "3:20:00.0 is more than 3 times this session's usual lap, 1:24.8.",
  );
  expect(within(table).getByRole("row", { name: /^8 / })).toHaveTextContent(/your usual lap here/);
  await user.click(within(part()).getByRole("checkbox", { name: /Leave out the laps far/ }));
  expect(await within(part()).findByRole("button", { name: "Import 5 laps" })).toBeEnabled();
  await user.click(within(part()).getByRole("checkbox", { name: /Leave out the laps far/ }));
  await press(user, "Import 7 laps");
  await screen.findAllByText("7 laps imported in 2 sessions.");
  const stored = (await rows(page)).runs.flatMap(lapsInOrder);
  expect(stored.filter(({ isOdd }) => isOdd).map(({ ms }) => ms)).toEqual([12_000_000, 803_456]);
});

it("judges laps of a table by the laps in the book", async () => {
  const page = await renderAt("#/data", <DataScreen />);
  await choose(page.user, withOdd.split("\n").slice(0, 6).join("\n"));
  await press(page.user, "Import 5 laps");
  await screen.findAllByText("5 laps imported in 1 session.");
  await choose(page.user, "date,car,track,time\n2026-05-03,Club Hatch,varnholt ring,13:23.456\n");
  expect(await within(part()).findByText(/1 lap lies far from what is usual\./)).toBeVisible();
  expect(within(part()).getByText(/is more than 3 times your usual lap here, 1:24\.800\./)).toBeVisible();
});

it("names the guests of a table, by whatever name, and the driver's own laps as none", async () => {
  const { user } = await renderAt("#/data", <DataScreen />);
  const laps = ["yes;No", ";", "yes;", "yes;No"].map(
    (guest) => `2026-04-03;club hatch;Varnholt Ring;1:24.9;${guest}`,
  );
  await choose(user, ["date;car;track;lap time;guest;guest name", ...laps, ""].join("\r\n"));
  expect(
    await within(part()).findByText(/3 laps are of guests: “No” and someone without a name\./),
  ).toBeVisible();
  const read = within(part()).getByRole("table", { name: "Read as" });
  expect(within(read).getByRole("row", { name: /^2 / })).toHaveTextContent("No driving");
  expect(within(read).getByRole("row", { name: /^3 / })).not.toHaveTextContent("driving");
  expect(within(read).getByRole("row", { name: /^4 / })).toHaveTextContent("someone else driving");
});
