/** One thing to pick in a Combobox. */
export interface ComboboxOption {
  readonly id: string;
  readonly label: string;
  /** Small words beside it: "last driven 14 October". */
  readonly detail?: string | undefined;
}

/** Text without case, accents and surplus spaces: two names that fold alike are taken for the same. */
export function foldText(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{Mark}/gu, "")
    .toLocaleLowerCase("en")
    .replace(/\s+/g, " ")
    .trim();
}

/** The options that hold every typed word, in the order given; all of them for no text. */
export function matchOptions(options: readonly ComboboxOption[], text: string): readonly ComboboxOption[] {
  const words = foldText(text).split(" ");
  return options.filter((option) => {
    const folded = foldText(option.label);
    return words.every((word) => folded.includes(word));
  });
}
