import { type PointerEvent, type SyntheticEvent, useRef } from "react";

/** So long is a press held, ms. Common practice, no source. */
const heldMs = 500;

/** What a button is given that does one thing when it is pressed, and another when it is held. */
export function useLongPress(onPress: () => void, onHeld: () => void) {
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const wasHeld = useRef(false);
  const held = useRef(onHeld);
  held.current = onHeld;
  const end = () => clearTimeout(timer.current);
  return {
    onPointerDown: ({ button }: PointerEvent) => {
      wasHeld.current = false;
      if (button !== 0) return;
      timer.current = setTimeout(() => {
        wasHeld.current = true;
        held.current();
      }, heldMs);
    },
    onPointerUp: end,
    onPointerLeave: end,
    onPointerCancel: end,
    // A phone would offer a menu for what is held.
    onContextMenu: (event: SyntheticEvent) => event.preventDefault(),
    onClick: () => {
      end();
      if (!wasHeld.current) onPress();
      wasHeld.current = false;
    },
  };
}
