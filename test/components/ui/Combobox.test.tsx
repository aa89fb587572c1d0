import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { useState } from "react";
import { describe, expect, it, vi } from "vitest";
import { Combobox } from "#ui/Combobox.tsx";

const options = [
  { id: "a", label: "Varnholt Ring" },
  { id: "b", label: "Tessemoor", detail: "last driven Tuesday" },
  { id: "c", label: "Café Bend" },
];

function Picker({ onPick, onMake }: { onPick: (id: string) => void; onMake: (text: string) => void }) {
  const [text, setText] = useState("");
  return (
    <Combobox
      label="Track"
      text={text}
      onText={setText}
      options={options}
      onPick={(option) => {
        setText(option.label);
        onPick(option.id);
      }}
      sayMake={(typed) => `Make new track "${typed}"`}
      onMake={onMake}
    />
  );
}

function setUp() {
  const onPick = vi.fn();
  const onMake = vi.fn();
  render(<Picker onPick={onPick} onMake={onMake} />);
  return { onPick, onMake, field: screen.getByRole("combobox", { name: "Track" }), user: userEvent.setup() };
}

describe("Combobox", () => {
  it("opens with the focus, is walked by the arrows, and takes with Enter", async () => {
    const { field, user, onPick } = setUp();
    expect(screen.queryByRole("listbox")).not.toBeInTheDocument();
    await user.tab();
    expect(screen.getAllByRole("option")).toHaveLength(3);
    expect(screen.queryByRole("option", { selected: true })).not.toBeInTheDocument();
    await user.keyboard("{ArrowDown}");
    expect(field).toHaveAttribute("aria-expanded", "true");
    const first = screen.getByRole("option", { name: "Varnholt Ring" });
    expect(first).toHaveAttribute("aria-selected", "true");
    expect(field).toHaveAttribute("aria-activedescendant", first.id);
    await user.keyboard("{ArrowDown}{Enter}");
    expect(onPick).toHaveBeenCalledExactlyOnceWith("b");
    expect(field).toHaveValue("Tessemoor");
    expect(field).toHaveFocus();
    expect(field).toHaveAttribute("aria-expanded", "false");
  });

  it("goes to the last option with Up, and round", async () => {
    const { user } = setUp();
    await user.tab();
    await user.keyboard("{ArrowUp}");
    expect(screen.getByRole("option", { name: "Café Bend" })).toHaveAttribute("aria-selected", "true");
    await user.keyboard("{ArrowDown}");
    expect(screen.getByRole("option", { name: "Varnholt Ring" })).toHaveAttribute("aria-selected", "true");
  });

  it("shows all there is while a name stands there untouched, and the next name takes its place", async () => {
    const { field, user } = setUp();
    await user.type(field, "varn");
    expect(screen.getAllByRole("option").map(({ textContent }) => textContent)).toEqual([
      "Varnholt Ring",
      'Make new track "varn"',
    ]);
    await user.keyboard("{ArrowDown}{Enter}");
    await user.tab();
    expect(screen.queryByRole("listbox")).not.toBeInTheDocument();
    await user.click(field);
    expect(screen.getAllByRole("option")).toHaveLength(3);
    await user.keyboard("tess");
    expect(field).toHaveValue("tess");
  });

  it("takes nothing by itself: Enter without walking is left to the form", async () => {
    const { user, field, onPick, onMake } = setUp();
    await user.type(field, "varnholt{Enter}");
    expect(onPick).not.toHaveBeenCalled();
    expect(onMake).not.toHaveBeenCalled();
  });

  it("closes with Escape and keeps what is typed, also at a second one", async () => {
    const { user, field } = setUp();
    await user.type(field, "ash");
    await user.keyboard("{Escape}");
    expect(field).toHaveValue("ash");
    expect(field).toHaveAttribute("aria-expanded", "false");
    await user.keyboard("{Escape}");
    expect(field).toHaveValue("ash");
  });

  it("keeps what is typed at Escape where nothing can be picked", async () => {
    const user = userEvent.setup();
    const onText = vi.fn();
    render(<Combobox label="Layout" text="Long" onText={onText} options={[]} onPick={vi.fn()} />);
    await user.type(screen.getByRole("combobox", { name: "Layout" }), "{Escape}");
    expect(onText).not.toHaveBeenCalled();
    expect(screen.getByRole("combobox", { name: "Layout" })).toHaveValue("Long");
  });

  it("opens with Alt and Down without going in", async () => {
    const { user, field } = setUp();
    await user.tab();
    await user.keyboard("{Alt>}{ArrowDown}{/Alt}");
    expect(field).toHaveAttribute("aria-expanded", "true");
    expect(field).not.toHaveAttribute("aria-activedescendant");
  });

  it("offers to make what is not there yet", async () => {
    const { user, field, onMake } = setUp();
    await user.type(field, " North Weir ");
    await user.click(screen.getByRole("option", { name: 'Make new track "North Weir"' }));
    expect(onMake).toHaveBeenCalledExactlyOnceWith("North Weir");
    expect(field).toHaveFocus();
  });

  it("offers the old name alone for one that differs in case or spaces, and with a new one for other accents", async () => {
    const { user, field } = setUp();
    const options = () => screen.getAllByRole("option").map((option) => option.textContent);
    await user.type(field, "cafe\u0301  BEND");
    expect(options()).toEqual(["Café Bend"]);
    await user.clear(field);
    await user.type(field, "cafe bend");
    expect(options()).toEqual(["Café Bend", 'Make new track "cafe bend"']);
  });

  it("keeps Left and Right for the text", async () => {
    const { user, field } = setUp();
    await user.type(field, "fe{ArrowLeft}x");
    expect(field).toHaveValue("fxe");
  });
});
