import { act } from "@testing-library/react";
import { expect, it, vi } from "vitest";
import type { FormReading } from "#domain";
import { type Press, useForm, useTyped } from "#live";
import { hooksAt } from "../../support/hooksAt.tsx";

const blank = { car: "", track: "" };
type Texts = typeof blank;
const noCar = { wrong: "The car needs a name.", right: "Write one." };
const noTrack = { wrong: "The track needs a name.", right: "Write one." };

function readNames({ car, track }: Texts): FormReading<Texts, keyof Texts> {
  if (car !== "" && track !== "") return { ok: true, value: { car, track } };
  return {
    ok: false,
    problems: { ...(car === "" && { car: noCar }), ...(track === "" && { track: noTrack }) },
  };
}

async function aForm(onRead: (value: Texts, press: Press) => void | Promise<void> = () => undefined) {
  const { draw } = await hooksAt();
  const { result } = draw(() => {
    const typed = useTyped(blank);
    return { typed, form: useForm({ typed, reading: readNames(typed.value), onRead }) };
  });
  const type = (key: keyof Texts, text: string) => act(() => result.current.form.field(key).onChange(text));
  const pressed = { timeStamp: 7, preventDefault: vi.fn() };
  const press = () => act(async () => result.current.form.submit(pressed));
  const problems = () => [
    result.current.form.field("car").problem,
    result.current.form.field("track").problem,
  ];
  return {
    form: () => result.current.form,
    typed: () => result.current.typed,
    type,
    press,
    pressed,
    problems,
  };
}

it("fields hold what is typed, one beside the other, and say nothing of problems before it is pressed", async () => {
  const { form, type, problems } = await aForm();
  type("car", "Kart");
  type("track", "Varnholt Ring");
  expect(form().texts).toEqual({ car: "Kart", track: "Varnholt Ring" });
  expect(form().field("car").value).toBe("Kart");
  type("car", "");
  expect(problems()).toEqual([undefined, undefined]);
  act(() => form().set({ car: "Hatch", track: "" }));
  expect(form().texts).toEqual({ car: "Hatch", track: "" });
});

it("pressed with something wrong in it, it says so at each such field until that is mended", async () => {
  const onRead = vi.fn(() => undefined);
  const { form, type, press, pressed, problems } = await aForm(onRead);
  await press();
  expect(pressed.preventDefault).toHaveBeenCalledTimes(1);
  expect(form()).toMatchObject({ isRefused: true, isBusy: false });
  expect(problems()).toEqual([noCar, noTrack]);
  type("car", "Kart");
  expect(problems()).toEqual([undefined, noTrack]);
  type("track", "Varnholt Ring");
  expect(form().isRefused).toBe(false);
  // Mended, it is as if it had never been pressed.
  type("track", "");
  expect(problems()).toEqual([undefined, undefined]);
  expect(onRead).not.toHaveBeenCalled();
});

it("what was read is handed on with the press, and a second press meanwhile does nothing", async () => {
  let letGo: () => void = () => undefined;
  const onRead = vi.fn(
    (_: Texts, __: Press) =>
      new Promise<void>((resolve) => {
        letGo = resolve;
      }),
  );
  const { form, type, press, pressed } = await aForm(onRead);
  type("car", "Kart");
  type("track", "Varnholt Ring");
  expect(form().isBusy).toBe(false);
  await press();
  expect(form().isBusy).toBe(true);
  await press();
  expect(onRead.mock.calls).toEqual([[{ car: "Kart", track: "Varnholt Ring" }, pressed]]);
  await act(async () => letGo());
  expect(form()).toMatchObject({ isBusy: false, isRefused: false });
  await press();
  expect(onRead).toHaveBeenCalledTimes(2);
  await act(async () => letGo());
  expect(form().isBusy).toBe(false);
});

it("texts that are only typed go back to what stood there at first", async () => {
  const { typed, type } = await aForm();
  type("car", "Kart");
  expect(typed().value).toEqual({ car: "Kart", track: "" });
  act(() => typed().set(undefined));
  expect(typed().value).toEqual(blank);
});
