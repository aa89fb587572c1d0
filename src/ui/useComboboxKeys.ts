import { type KeyboardEvent, useState } from "react";

interface ComboboxKeys {
  /** Options shown, "make new" included. */
  readonly count: number;
  readonly onTake: (index: number) => void;
}

interface ComboboxState {
  readonly open: boolean;
  /** Index of the option the keyboard is at; -1 while it is in the text. */
  readonly at: number;
  readonly show: () => void;
  readonly hide: () => void;
  readonly onKeyDown: (event: KeyboardEvent<HTMLInputElement>) => void;
}

/**
 * The keys of a combobox with list autocomplete and manual selection, after the ARIA Authoring Practices Guide; but Escape
 * only closes the list, and never takes what is typed.
 */
export function useComboboxKeys({ count, onTake }: ComboboxKeys): ComboboxState {
  const [open, setOpen] = useState(false);
  const [walked, setWalked] = useState(-1);
  const at = open && walked < count ? walked : -1;
  const show = () => {
    setOpen(true);
    setWalked(-1);
  };
  const hide = () => {
    setOpen(false);
    setWalked(-1);
  };
  const goTo = (index: number) => {
    setOpen(true);
    setWalked(index);
  };

  const shown = open && count > 0;
  const actOf = (key: string, alt: boolean): (() => void) | undefined => {
    const canWalk = count > 0 && !alt;
    if (key === "ArrowDown" && alt) return show;
    if (key === "ArrowUp" && alt) return shown ? hide : undefined;
    if (key === "ArrowDown" && canWalk) return () => goTo(at + 1 < count ? at + 1 : 0);
    if (key === "ArrowUp" && canWalk) return () => goTo(at > 0 ? at - 1 : count - 1);
    if (key === "Enter" && at >= 0) return () => onTake(at);
    if (key === "Escape" && shown) return hide;
    return undefined;
  };

  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.ctrlKey || event.metaKey) return;
    if (["ArrowLeft", "ArrowRight", "Home", "End"].includes(event.key)) setWalked(-1);
    const act = actOf(event.key, event.altKey);
    if (act === undefined) return;
    act();
    event.preventDefault();
    event.stopPropagation();
  };
  return { open: shown, at, show, hide, onKeyDown };
}
