import { searchText } from "#domain";

/** One thing to pick in a Combobox. */
export interface ComboboxOption {
  readonly id: string;
  readonly label: string;
  /** Small words beside it: "last driven 14 October". */
  readonly detail?: string | undefined;
}

/** The options that hold every typed word, in the order given; all of them for no text. */
export function matchOptions(options: readonly ComboboxOption[], text: string): readonly ComboboxOption[] {
  const words = searchText(text).split(" ");
  return options.filter((option) => {
    const folded = searchText(option.label);
    return words.every((word) => folded.includes(word));
  });
}
