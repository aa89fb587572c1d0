import type { KeyboardEvent } from "react";
import { Field, type FieldProps } from "#ui/Field.tsx";

/** A field for a figure that the arrow keys move by one, ten with Shift; whatever else stands behind it stays. */
export function StepField(props: Omit<FieldProps, "onKeyDown" | "figures" | "inputMode">) {
  const { value, onChange } = props;
  const onKeyDown = (event: KeyboardEvent) => {
    const way = { ArrowUp: 1, ArrowDown: -1 }[event.key];
    const [, before = "", figure = "", behind = ""] = /^(\s*)(\d+(?:[.,]\d+)?)(.*)$/.exec(value) ?? [];
    if (way === undefined || figure === "") return;
    event.preventDefault();
    const next = Number(figure.replace(",", ".")) + way * (event.shiftKey ? 10 : 1);
    if (next >= 0) onChange(`${before}${Math.round(next * 100) / 100}${behind}`);
  };
  return <Field {...props} figures inputMode="decimal" onKeyDown={onKeyDown} />;
}
