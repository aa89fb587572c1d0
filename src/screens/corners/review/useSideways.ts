import { type PointerEvent, useEffect, useRef } from "react";

/** So many pixels a finger that only taps may move. */
const slop = 8;

interface Sideways {
  /** A tap, or the first move that is more sideways than up or down: the value at the point where it was put down, and now. */
  readonly onTake: (from: number, now: number) => void;
  /** The browser took the finger for itself: what was taken is given back. */
  readonly onCancel: () => void;
}

/**
 * A finger that moves sideways over an element moves its value; one that moves up or down scrolls the page and changes nothing,
 * for whoever scrolls over a drawing did not mean it. A tap counts once it is over. All in pixels across the page.
 */
export function useSideways({ onTake, onCancel }: Sideways) {
  const held = useRef<{ id: number; x: number; y: number; isTaken: boolean }>(undefined);
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const element = box.current;
    // Else the browser takes a quick move for a throw, and the tap after it for the hand that stops one.
    const keep = (event: TouchEvent) => {
      if (held.current?.isTaken && event.cancelable) event.preventDefault();
    };
    element?.addEventListener("touchmove", keep, { passive: false });
    return () => element?.removeEventListener("touchmove", keep);
  }, []);
  return {
    ref: box,
    onPointerDown: ({ isPrimary, button, pointerId: id, clientX: x, clientY: y }: PointerEvent) => {
      if (isPrimary && button === 0) held.current = { id, x, y, isTaken: false };
    },
    onPointerMove: ({ pointerId, clientX, clientY, currentTarget }: PointerEvent) => {
      const hold = held.current;
      if (hold?.id !== pointerId) return;
      const [across, along] = [Math.abs(clientX - hold.x), Math.abs(clientY - hold.y)];
      if (!hold.isTaken) {
        if (Math.max(across, along) < slop) return;
        if (along >= across) {
          held.current = undefined;
          return;
        }
        hold.isTaken = true;
        currentTarget.setPointerCapture(pointerId);
      }
      onTake(hold.x, clientX);
    },
    onPointerUp: ({ pointerId }: PointerEvent) => {
      const hold = held.current;
      if (hold?.id !== pointerId) return;
      held.current = undefined;
      if (!hold.isTaken) onTake(hold.x, hold.x);
    },
    onPointerCancel: ({ pointerId }: PointerEvent) => {
      const hold = held.current;
      if (hold?.id !== pointerId) return;
      held.current = undefined;
      if (hold.isTaken) onCancel();
    },
  };
}
