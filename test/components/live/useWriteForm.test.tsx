import { act, screen, waitFor } from "@testing-library/react";
import { expect, it } from "vitest";
import { addCombo, type Change, combosWithNames, LedgerFault, type Logbook } from "#db";
import { comboName, type FormReading } from "#domain";
import { useDraft, useRows, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import { renderAt } from "../../support/renderAt.tsx";

const blank = { car: "", track: "" };
type Texts = typeof blank;

function readNames({ car, track }: Texts): FormReading<Texts, keyof Texts> {
  const problems = {
    car: car === "" ? "The car needs a name." : undefined,
    track: track === "" ? "The track needs a name." : undefined,
  };
  return problems.car === undefined && problems.track === undefined
    ? { ok: true, value: { car, track } }
    : { ok: false, problems };
}

interface NamesFormProps {
  readonly write: (book: Logbook, texts: Texts) => Promise<Change>;
  readonly isAgreed?: (texts: Texts) => boolean;
  readonly onStored?: (change: Change) => void;
}

function NamesForm({ write, ...how }: NamesFormProps) {
  const draft = useDraft("names", blank);
  const combos = useRows(combosWithNames, []);
  const { box, field, submit } = useWriteForm({
    typed: draft,
    reading: readNames(draft.value),
    write,
    ...how,
  });
  return (
    <form ref={box} noValidate onSubmit={submit}>
      <Field label="Car" {...field("car")} />
      <Field label="Track" {...field("track")} />
      <Button type="submit">Store</Button>
      <p>Stored: {combos?.map(comboName).join(", ")}</p>
    </form>
  );
}

const add = (book: Logbook, { car, track }: Texts) =>
  addCombo(book, { car: { name: car }, track: { name: track } });
const field = (name: string) => screen.findByRole("textbox", { name });
const store = () => screen.getByRole("button", { name: "Store" });

/** A write that waits until it is let go. */
function heldBack() {
  const waiting: (() => void)[] = [];
  let begun = 0;
  const held = new Promise<void>((resolve) => {
    waiting.push(resolve);
  });
  const write = async (book: Logbook, texts: Texts) => {
    begun += 1;
    await held;
    return add(book, texts);
  };
  return { write, letGo: () => waiting.at(0)?.(), begun: () => begun };
}

it("a form with something wrong in it stores nothing, says so at each field, and goes to the first", async () => {
  const { user } = await renderAt("#/log", <NamesForm write={add} />);
  await user.type(await field("Car"), "Kart");
  expect(await field("Track")).not.toHaveAccessibleDescription();
  await user.click(store());
  expect(await field("Track")).toHaveAccessibleDescription("The track needs a name.");
  await waitFor(async () => expect(await field("Track")).toHaveFocus());
  expect(await field("Car")).not.toBeInvalid();
  await user.clear(await field("Car"));
  await user.click(store());
  await waitFor(async () => expect(await field("Car")).toHaveFocus());
  expect(screen.getByText("Stored:")).toBeVisible();
});

it("what was typed is forgotten once it is in the book", async () => {
  const { user } = await renderAt("#/log", <NamesForm write={add} />);
  await user.type(await field("Car"), "Kart");
  await user.type(await field("Track"), "Varnholt Ring{Enter}");
  expect(await screen.findByText("Stored: Varnholt Ring · Kart")).toBeVisible();
  expect(await field("Car")).toHaveValue("");
  expect(await field("Track")).not.toBeInvalid();
});

it("pressed twice it stores once", async () => {
  const { write, letGo, begun } = heldBack();
  const { user } = await renderAt("#/log", <NamesForm write={write} />);
  await user.type(await field("Car"), "Kart");
  await user.type(await field("Track"), "Varnholt Ring{Enter}{Enter}");
  await user.click(store());
  expect(begun()).toBe(1);
  act(letGo);
  expect(await screen.findByText("Stored: Varnholt Ring · Kart")).toBeVisible();
  expect(begun()).toBe(1);
});

it("what is typed while it is being stored stays", async () => {
  const { write, letGo } = heldBack();
  const { user } = await renderAt("#/log", <NamesForm write={write} />);
  await user.type(await field("Car"), "Kart");
  await user.type(await field("Track"), "Varnholt Ring{Enter}");
  await user.type(await field("Track"), ", short");
  act(letGo);
  expect(await screen.findByText("Stored: Varnholt Ring · Kart")).toBeVisible();
  expect(await field("Track")).toHaveValue("Varnholt Ring, short");
});

it("a write that fails leaves what was typed, and it can be pressed again", async () => {
  let isFull = true;
  const write = async (book: Logbook, texts: Texts) => {
    if (isFull) throw new LedgerFault("failed", "Not stored: no space.");
    return add(book, texts);
  };
  const { user } = await renderAt("#/log", <NamesForm write={write} />);
  await user.type(await field("Car"), "Kart");
  await user.type(await field("Track"), "Varnholt Ring{Enter}");
  expect((await screen.findAllByText("Not stored: no space."))[0]).toBeVisible();
  expect(await field("Car")).toHaveValue("Kart");
  isFull = false;
  await user.click(store());
  expect(await screen.findByText("Stored: Varnholt Ring · Kart")).toBeVisible();
  await waitFor(async () => expect(await field("Car")).toHaveValue(""));
});

it("what has to be agreed to first is asked, and nothing is stored without it; who waits is told once it is", async () => {
  const asked: Texts[] = [];
  const stored: string[] = [];
  const isAgreed = (texts: Texts) => asked.push(texts) > 1;
  const { user } = await renderAt(
    "#/log",
    <NamesForm write={add} isAgreed={isAgreed} onStored={({ what }) => void stored.push(what)} />,
  );
  await user.type(await field("Car"), "Kart");
  await user.type(await field("Track"), "Varnholt Ring{Enter}");
  expect(asked).toEqual([{ car: "Kart", track: "Varnholt Ring" }]);
  expect(screen.getByText("Stored:")).toBeVisible();
  expect([stored, await field("Car")]).toEqual([[], expect.objectContaining({ value: "Kart" })]);
  await user.click(store());
  expect(await screen.findByText("Stored: Varnholt Ring · Kart")).toBeVisible();
  expect(stored).toHaveLength(1);
});
