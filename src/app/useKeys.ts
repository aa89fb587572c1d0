import { useEffect } from "react";
import { useUndo } from "#state/undo.ts";

/**
 * Ctrl or Cmd Z takes the last deed back, with Shift does it again. In a field the browser's own undo goes first: wherever text
 * stands, or stood until it was emptied there. Enter ends that, for what was typed has become a deed.
 */
export function useKeys(): void {
  useEffect(() => {
    let edited: EventTarget | null = null;
    const onInput = ({ target }: Event) => {
      edited = target;
    };
    const onFocusOut = () => {
      edited = null;
    };
    const onKeyDown = (event: KeyboardEvent) => {
      const { target } = event;
      if (event.key === "Enter") edited = null;
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
      const isOfText = target instanceof HTMLInputElement && target.type === "text";
      if (isOfText && (target.value !== "" || target === edited)) return;
      if (target instanceof HTMLTextAreaElement) return;
      event.preventDefault();
      const { undo, redo } = useUndo.getState();
      void (event.shiftKey ? redo() : undo());
    };
    window.addEventListener("input", onInput);
    window.addEventListener("focusout", onFocusOut);
    window.addEventListener("keydown", onKeyDown);
    return () => {
      window.removeEventListener("input", onInput);
      window.removeEventListener("focusout", onFocusOut);
      window.removeEventListener("keydown", onKeyDown);
    };
  }, []);
}
