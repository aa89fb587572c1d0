import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { useRef, useState } from "react";
import { describe, expect, it } from "vitest";
import { Button } from "#ui/Button.tsx";
import { Dialog } from "#ui/Dialog.tsx";

function Page({ focus }: { focus: "first" | "actions" }) {
  const [open, setOpen] = useState(false);
  const after = useRef<HTMLButtonElement>(null);
  return (
    <>
      <Button onClick={() => setOpen(true)}>Move laps</Button>
      <Button ref={after}>Go on</Button>
      {open && (
        <Dialog
          title="Move two laps"
          onClose={() => setOpen(false)}
          focus={focus}
          returnTo={after}
          actions={
            <>
              <Button onClick={() => setOpen(false)}>Leave them</Button>
              <Button variant="primary">Move</Button>
            </>
          }
        >
          <label>
            To run <input />
          </label>
        </Dialog>
      )}
    </>
  );
}

describe("Dialog", () => {
  it("takes the focus to its first field and gives it back on Escape", async () => {
    render(<Page focus="first" />);
    await userEvent.click(screen.getByRole("button", { name: "Move laps" }));
    expect(screen.getByRole("dialog", { name: "Move two laps" })).toBeInTheDocument();
    expect(screen.getByRole("textbox", { name: "To run" })).toHaveFocus();
    await userEvent.keyboard("{Escape}");
    expect(screen.queryByRole("dialog")).not.toBeInTheDocument();
    expect(screen.getByRole("button", { name: "Move laps" })).toHaveFocus();
  });

  it("starts at the least destructive button where asked", async () => {
    render(<Page focus="actions" />);
    await userEvent.click(screen.getByRole("button", { name: "Move laps" }));
    expect(screen.getByRole("button", { name: "Leave them" })).toHaveFocus();
  });

  it("gives the focus to where work goes on when its opener is gone", async () => {
    function Gone() {
      const [gone, setGone] = useState(false);
      const after = useRef<HTMLButtonElement>(null);
      const [open, setOpen] = useState(false);
      return (
        <>
          {!gone && <Button onClick={() => setOpen(true)}>Delete run</Button>}
          <Button ref={after}>Undo</Button>
          {open && (
            <Dialog
              title="Delete the run"
              onClose={() => setOpen(false)}
              returnTo={after}
              actions={
                <Button
                  onClick={() => {
                    setGone(true);
                    setOpen(false);
                  }}
                >
                  Delete
                </Button>
              }
            >
              <p>Eight laps go with it.</p>
            </Dialog>
          )}
        </>
      );
    }
    render(<Gone />);
    await userEvent.click(screen.getByRole("button", { name: "Delete run" }));
    await userEvent.click(screen.getByRole("button", { name: "Delete" }));
    expect(screen.getByRole("button", { name: "Undo" })).toHaveFocus();
  });
});
