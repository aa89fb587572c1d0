import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { useState } from "react";
import { describe, expect, it } from "vitest";
import { Choice } from "#ui/Choice.tsx";
import { Field } from "#ui/Field.tsx";

function Width() {
  const [text, setText] = useState("");
  const problem =
    text !== "" && Number.isNaN(Number(text))
      ? { wrong: `"${text}" is no length`, right: "Write metres, such as 12.5" }
      : undefined;
  return (
    <Field label="Width" hint="kerb to kerb" unit="m" value={text} onChange={setText} problem={problem} />
  );
}

describe("Field", () => {
  it("ties hint and problem to the input and keeps what was typed", async () => {
    render(<Width />);
    const field = screen.getByRole("textbox", { name: "Width" });
    expect(field).toHaveAccessibleDescription("kerb to kerb");
    expect(field).toBeValid();
    await userEvent.type(field, "wide");
    expect(field).toHaveValue("wide");
    expect(field).toHaveAttribute("aria-invalid", "true");
    expect(field).toHaveAccessibleDescription(
      '"wide" is no length. Write metres, such as 12.5. kerb to kerb',
    );
    await userEvent.clear(field);
    await userEvent.type(field, "12.5");
    expect(field).not.toHaveAttribute("aria-invalid");
  });
});

function Effort() {
  const [effort, setEffort] = useState<"easy" | "full" | undefined>(undefined);
  return (
    <Choice
      label="Effort"
      value={effort}
      onChange={setEffort}
      options={[
        { value: "easy", label: "easy" },
        { value: "full", label: "full" },
      ]}
      problem={effort === undefined ? "Choose an effort" : undefined}
    />
  );
}

describe("Choice", () => {
  it("is one group, walked by the arrow keys", async () => {
    render(<Effort />);
    expect(screen.getByRole("group", { name: "Effort" })).toHaveAccessibleDescription("Choose an effort");
    await userEvent.click(screen.getByRole("radio", { name: "easy" }));
    await userEvent.keyboard("{ArrowRight}");
    expect(screen.getByRole("radio", { name: "full" })).toBeChecked();
    expect(screen.getByRole("group", { name: "Effort" })).not.toHaveAccessibleDescription();
  });
});
