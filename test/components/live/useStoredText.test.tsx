import { act, waitFor } from "@testing-library/react";
import { expect, it, vi } from "vitest";
import { readDrafts } from "#db";
import { useStoredText } from "#live";
import { hooksAt } from "../../support/hooksAt.tsx";

interface Stands {
  readonly value: number | undefined;
  readonly stored: string;
}

const problem = { wrong: "“x” is no pressure.", right: "Write a number." };
const read = (text: string) => {
  if (text === "") return { ok: true, value: undefined } as const;
  const value = Number(text);
  return Number.isNaN(value) ? ({ ok: false, problem } as const) : ({ ok: true, value } as const);
};

/** A field of a pressure, with what stands in the book. */
async function aField(stands: Stands = { value: 180, stored: "180" }, isStored = true) {
  const page = await hooksAt();
  const onStore = vi.fn(async (_: number | undefined) => (isStored ? {} : undefined));
  const drawn = page.draw(
    ({ value, stored }: Stands) =>
      useStoredText<number | undefined>({ draftKey: "pressure r", value, stored, read, onStore }),
    stands,
  );
  await waitFor(() => expect(drawn.result.current.draft.isRead).toBe(true));
  const type = (text: string) => act(() => drawn.result.current.field.onChange(text));
  const leave = () => act(async () => drawn.result.current.field.onBlur());
  const shown = () => drawn.result.current.field.value;
  const kept = async () => (await readDrafts(page.shelf)).map(({ state }) => state);
  return { ...drawn, onStore, type, leave, shown, kept };
}

it("shows what is stored, and stores what is typed when the field is left", async () => {
  const { type, leave, shown, onStore, kept, rerender, result } = await aField();
  expect(shown()).toBe("180");
  type(" 175 ");
  expect(shown()).toBe(" 175 ");
  expect(onStore).not.toHaveBeenCalled();
  await waitFor(async () => expect(await kept()).toEqual([" 175 "]));
  await leave();
  expect(onStore.mock.calls).toEqual([[175]]);
  // Until the row has been read again, what was stored last is shown.
  expect(shown()).toBe("175");
  expect(result.current.draft.isEmpty).toBe(true);
  await waitFor(async () => expect(await kept()).toEqual([]));
  rerender({ value: 175, stored: "175" });
  expect(shown()).toBe("175");
  rerender({ value: 170, stored: "170" });
  expect(shown()).toBe("170");
});

it("stores nothing where nothing was typed, or what means the same", async () => {
  const { type, leave, onStore, shown, kept } = await aField();
  await leave();
  type("180.0");
  await leave();
  expect(onStore).not.toHaveBeenCalled();
  expect(shown()).toBe("180");
  await waitFor(async () => expect(await kept()).toEqual([]));
});

it("what cannot be read is said at the field, stays there, and is not stored", async () => {
  const { type, leave, onStore, shown, result } = await aField();
  expect(result.current.field.problem).toBeUndefined();
  type("x");
  expect(result.current.field.problem).toEqual(problem);
  await leave();
  expect(onStore).not.toHaveBeenCalled();
  expect(shown()).toBe("x");
  type("");
  await leave();
  expect(onStore.mock.calls).toEqual([[undefined]]);
});

it("what could not be stored stays typed", async () => {
  const { type, leave, shown, kept } = await aField({ value: 180, stored: "180" }, false);
  type("175");
  await leave();
  expect(shown()).toBe("175");
  await waitFor(async () => expect(await kept()).toEqual(["175"]));
});

it("what is typed while it is being stored stays typed", async () => {
  const { type, result, shown, onStore } = await aField();
  let letGo: (done: object) => void = () => undefined;
  onStore.mockImplementationOnce(
    () =>
      new Promise((resolve) => {
        letGo = resolve;
      }),
  );
  type("175");
  act(() => result.current.store());
  type("1756");
  await act(async () => letGo({}));
  expect(shown()).toBe("1756");
  expect(onStore.mock.calls).toEqual([[175]]);
});

it("is stored when the part that holds it leaves the page", async () => {
  const { type, unmount, onStore } = await aField();
  type("175");
  unmount();
  await waitFor(() => expect(onStore.mock.calls).toEqual([[175]]));
});
