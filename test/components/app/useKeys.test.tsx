import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { useState } from "react";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { useUndo } from "#state/undo.ts";
import { useKeys } from "../../../src/app/useKeys.ts";

const undo = vi.fn(async () => {});
const before = useUndo.getState();
beforeEach(() => {
  undo.mockClear();
  useUndo.setState({ undo });
});
afterEach(() => useUndo.setState(before));

/** A field that Escape and Enter empty, as an entry line does. */
function Page() {
  useKeys();
  const [text, setText] = useState("");
  return (
    <>
      <input
        aria-label="line"
        value={text}
        onChange={(event) => setText(event.target.value)}
        onKeyDown={({ key }) => (key === "Escape" || key === "Enter") && setText("")}
      />
      <input aria-label="other" />
    </>
  );
}

it("Ctrl Z in a field that was typed in leaves the logbook alone, even once the field is empty", async () => {
  const user = userEvent.setup();
  render(<Page />);
  await user.type(screen.getByLabelText("line"), "h . 1{Control>}z{/Control}");
  await user.keyboard("{Escape}{Control>}z{/Control}");
  expect(screen.getByLabelText("line")).toHaveValue("");
  expect(undo).not.toHaveBeenCalled();
  await user.click(screen.getByLabelText("other"));
  await user.keyboard("{Control>}z{/Control}");
  expect(undo).toHaveBeenCalledTimes(1);
});

it("Ctrl Z takes back what Enter made of the line", async () => {
  const user = userEvent.setup();
  render(<Page />);
  await user.type(screen.getByLabelText("line"), "1:23.4{Enter}{Control>}z{/Control}");
  expect(undo).toHaveBeenCalledTimes(1);
});
