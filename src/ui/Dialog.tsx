import { type ReactNode, type RefObject, useEffect, useId, useRef } from "react";
import styles from "./Dialog.module.css";

export interface DialogProps {
  readonly title: string;
  /** Called by Escape; the owner then takes the dialog out of the page. Mounted means open. */
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** A row of buttons. */
  readonly actions?: ReactNode;
  /** "alertdialog" only where undo is impossible; its body is then read out. */
  readonly role?: "dialog" | "alertdialog";
  /** Where the focus goes: the first control, the title (long text), the first of the actions that removes nothing, or the main one. */
  readonly focus?: "first" | "title" | "actions" | "main";
  /** Where work goes on if what opened the dialog is gone when it closes. */
  readonly returnTo?: RefObject<HTMLElement | null>;
}

const CONTROLS =
  "input:not(:disabled), select:not(:disabled), textarea:not(:disabled), button:not(:disabled), a[href]";

/** A modal dialog on the browser's own element: focus goes in, stays in, and comes back. */
export function Dialog(props: DialogProps) {
  const { title, onClose, children, actions, role = "dialog", focus = "first", returnTo } = props;
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const body = useRef<HTMLDivElement>(null);
  const buttons = useRef<HTMLDivElement>(null);
  const start = useRef({ focus, returnTo });
  const id = useId();

  useEffect(() => {
    const element = dialog.current;
    if (element === null) return;
    const opener = document.activeElement;
    const { focus: place, returnTo: fallback } = start.current;
    if (typeof element.showModal === "function") element.showModal();
    else element.setAttribute("open", "");
    const controls = [...(buttons.current?.querySelectorAll<HTMLElement>(CONTROLS) ?? [])];
    const inActions = controls.find((control) => control.closest("[data-part=removes]") === null);
    const main = controls.find((control) => control.closest("[data-part=main]") !== null);
    const first = body.current?.querySelector<HTMLElement>(CONTROLS) ?? inActions;
    const wanted = { title: heading.current, actions: inActions, main, first }[place];
    (wanted ?? heading.current)?.focus();
    return () => {
      if (typeof element.close === "function" && element.open) element.close();
      const stillThere = opener instanceof HTMLElement && opener.isConnected && opener !== document.body;
      (stillThere ? opener : fallback?.current)?.focus();
    };
  }, []);

  return (
    <dialog
      ref={dialog}
      role={role}
      aria-modal="true"
      aria-labelledby={`${id}-title`}
      aria-describedby={role === "alertdialog" ? `${id}-body` : undefined}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onKeyDown={(event) => {
        if (event.key !== "Escape" || event.defaultPrevented) return;
        event.preventDefault();
        event.stopPropagation();
        onClose();
      }}
      className={styles["dialog"]}
    >
      <div className={styles["content"]}>
        <h2 ref={heading} id={`${id}-title`} tabIndex={-1}>
          {title}
        </h2>
        <div ref={body} id={`${id}-body`} className={styles["content"]}>
          {children}
        </div>
        {actions !== undefined && (
          <div ref={buttons} className={styles["actions"]}>
            {actions}
          </div>
        )}
      </div>
    </dialog>
  );
}
