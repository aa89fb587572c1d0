import { useEffect } from "react";
import { useUndo } from "#state/undo.ts";

/** Ctrl or Cmd Z takes the last deed back, with Shift does it again; in a field the browser's own undo goes first. */
export function useKeys(): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
      const { target } = event;
      const hasText = target instanceof HTMLInputElement && target.type === "text" && target.value !== "";
      if (hasText || target instanceof HTMLTextAreaElement) return;
      event.preventDefault();
      const { undo, redo } = useUndo.getState();
      void (event.shiftKey ? redo() : undo());
    };
    window.addEventListener("keydown", onKeyDown);
    return () => window.removeEventListener("keydown", onKeyDown);
  }, []);
}
