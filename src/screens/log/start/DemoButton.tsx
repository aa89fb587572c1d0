import { Button, type ButtonProps } from "#ui/Button.tsx";

/** The way to the demo logbook, which keeps its place before it can be gone. */
export function DemoButton(props: Pick<ButtonProps, "disabled" | "onClick">) {
  return (
    <Button size="between" {...props}>
      Load the demo logbook
    </Button>
  );
}
