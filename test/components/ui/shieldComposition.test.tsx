import { fireEvent, render, screen } from "@testing-library/react";
import { useEffect } from "react";
import { describe, expect, it, vi } from "vitest";
import { Combobox } from "#ui/Combobox.tsx";
import { Dialog } from "#ui/Dialog.tsx";

/** The key as each order of engines sends it: inside the composition, or after its end with the code 229. */
const orders = [
  ["while composing", { isComposing: true, keyCode: 13 }],
  ["after the composition has ended", { isComposing: false, keyCode: 229 }],
] as const;

interface Deeds {
  readonly react: () => void;
  readonly native: () => void;
  readonly sent: () => void;
}

function Page({ react, native, sent }: Deeds) {
  useEffect(() => {
    window.addEventListener("keydown", native);
    return () => window.removeEventListener("keydown", native);
  }, [native]);
  return (
    <form
      onKeyDown={react}
      onKeyUp={react}
      onSubmit={(event) => {
        event.preventDefault();
        sent();
      }}
    >
      <input aria-label="Name" />
      <button type="submit">Store</button>
    </form>
  );
}

const drawn = () => {
  const deeds = { react: vi.fn(), native: vi.fn(), sent: vi.fn() };
  render(<Page {...deeds} />);
  return { ...deeds, field: screen.getByRole("textbox", { name: "Name" }) as HTMLInputElement };
};

describe.each(orders)("a key %s", (_, key) => {
  it("reaches no handler, and the next one reaches them all", () => {
    const { react, native, field } = drawn();
    for (const name of ["Enter", "Escape", "ArrowUp"]) {
      fireEvent.keyDown(field, { key: name, ...key });
      fireEvent.keyUp(field, { key: name, ...key });
    }
    expect(react).not.toHaveBeenCalled();
    expect(native).not.toHaveBeenCalled();
    fireEvent.keyDown(field, { key: "Enter", keyCode: 13 });
    expect(react).toHaveBeenCalledOnce();
    expect(native).toHaveBeenCalledOnce();
  });

  it("sends no form, and the button pressed next does", () => {
    const { sent, field } = drawn();
    fireEvent.keyDown(field, { key: "Enter", ...key });
    expect(fireEvent.submit(field.form ?? field), "the page would be left").toBe(false);
    expect(sent).not.toHaveBeenCalled();
    fireEvent.pointerDown(screen.getByRole("button", { name: "Store" }));
    fireEvent.click(screen.getByRole("button", { name: "Store" }));
    expect(sent).toHaveBeenCalledOnce();
  });

  it("sends no form, and the same key let go and pressed again does", () => {
    const { sent, field } = drawn();
    fireEvent.keyDown(field, { key: "Enter", ...key });
    fireEvent.submit(field.form ?? field);
    fireEvent.keyUp(field, { key: "Enter", keyCode: 13 });
    fireEvent.keyDown(field, { key: "Enter", keyCode: 13 });
    fireEvent.submit(field.form ?? field);
    expect(sent).toHaveBeenCalledOnce();
  });

  it("neither closes a dialog nor lets the browser cancel it", () => {
    const onClose = vi.fn();
    render(
      <Dialog title="End the session" onClose={onClose}>
        <input aria-label="Note" />
      </Dialog>,
    );
    const dialog = screen.getByRole("dialog");
    fireEvent.keyDown(screen.getByRole("textbox", { name: "Note" }), { key: "Escape", ...key });
    expect(fireEvent(dialog, new Event("cancel", { cancelable: true }))).toBe(false);
    expect(onClose).not.toHaveBeenCalled();
    fireEvent.keyUp(dialog, { key: "Escape", keyCode: 27 });
    fireEvent(dialog, new Event("cancel", { cancelable: true }));
    expect(onClose).toHaveBeenCalledOnce();
  });

  it("neither takes an option of a combobox nor empties it", () => {
    const onText = vi.fn();
    const onPick = vi.fn();
    render(
      <Combobox
        label="Car"
        text="ク"
        onText={onText}
        options={[{ id: "1", label: "クラブ" }]}
        onPick={onPick}
      />,
    );
    const field = screen.getByRole("combobox", { name: "Car" });
    fireEvent.keyDown(field, { key: "ArrowDown", keyCode: 40 });
    for (const name of ["Enter", "Escape", "Escape"]) fireEvent.keyDown(field, { key: name, ...key });
    expect(onPick).not.toHaveBeenCalled();
    expect(onText).not.toHaveBeenCalled();
    fireEvent.keyDown(field, { key: "Enter", keyCode: 13 });
    expect(onPick).toHaveBeenCalledOnce();
  });
});
