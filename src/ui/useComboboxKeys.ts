import { type KeyboardEvent, useState } from "react";

interface ComboboxKeys {
  /** Options shown, "make new" included. */
  readonly count: number;
  readonly onTake: (index: number) => void;
  readonly onClear: () => void;
}

interface ComboboxState {
  readonly open: boolean;
  /** Index of the option the keyboard is at; -1 while it is in the text. */
  readonly at: number;
  readonly show: () => void;
  readonly hide: () => void;
  readonly onKeyDown: (event: KeyboardEvent<HTMLInputElement>) => void;
}

/** The keys of a combobox with list autocomplete and manual selection, after the ARIA Authoring Practices Guide. */
export function useComboboxKeys({ count, onTake, onClear }: ComboboxKeys): ComboboxState {
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

  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.nativeEvent.isComposing || event.ctrlKey || event.metaKey) return;
    const act = actOf(event.key);
    if (act === undefined) return;
    act();
    event.preventDefault();
    event.stopPropagation();

    function actOf(key: string): (() => void) | undefined {
      if (key === "ArrowDown") {
        if (event.altKey) return show;
        return count === 0 ? undefined : () => goTo(at + 1 < count ? at + 1 : 0);
      }
      if (key === "ArrowUp") {
        if (event.altKey) return open ? hide : undefined;
        return count === 0 ? undefined : () => goTo(at > 0 ? at - 1 : count - 1);
      }
      if (key === "Enter") return at >= 0 ? () => onTake(at) : undefined;
      if (key === "Escape") {
        if (open) return hide;
        return event.currentTarget.value === "" ? undefined : onClear;
      }
      return undefined;
    }
  };
  return { open: open && count > 0, at, show, hide, onKeyDown };
}
