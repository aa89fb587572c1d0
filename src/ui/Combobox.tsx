import { type Ref, useEffect, useId, useRef, useState } from "react";
import { sameName } from "#domain";
import styles from "./Combobox.module.css";
import { classes } from "./classes.ts";
import fieldStyles from "./Field.module.css";
import { FieldFrame, type Labelled } from "./FieldFrame.tsx";
import { type ComboboxOption, matchOptions } from "./matchOptions.ts";
import { Name } from "./Name.tsx";
import { useComboboxKeys } from "./useComboboxKeys.ts";

export interface ComboboxProps extends Labelled {
  /** The text in the field, kept by the owner. */
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly options: readonly ComboboxOption[];
  /** Picking also asks the owner to put the option's label into the field. */
  readonly onPick: (option: ComboboxOption) => void;
  /** Words of the option that makes something new: `(text) => \`Make new track "${text}"\``. */
  readonly sayMake?: (text: string) => string;
  readonly onMake?: (text: string) => void;
  readonly ref?: Ref<HTMLInputElement>;
  readonly required?: boolean;
}

/**
 * Pick one of many by typing, or make a new one. A name that differs only in case or spaces is the old one. Until something
 * is typed the list shows all there is, whatever stands in the field; it opens with the focus and with a press.
 */
export function Combobox(props: ComboboxProps) {
  const { label, labelHidden, hint, problem, text, onText, options, onPick, sayMake, onMake, ref, required } =
    props;
  const listId = useId();
  const list = useRef<HTMLDivElement>(null);
  const [isTyped, setTyped] = useState(false);
  const isFirstPress = useRef(false);
  const matches = isTyped ? matchOptions(options, text) : options;
  const isNew = text.trim() !== "" && !options.some((option) => sameName(option.label, text));
  // Where nothing can be picked, what is typed is new without a word, and no list lies over what stands below.
  const canMake = isNew && options.length > 0 && sayMake !== undefined && onMake !== undefined;
  const keys = useComboboxKeys({
    count: matches.length + (canMake ? 1 : 0),
    onTake: take,
  });
  // A name typed whole leaves nothing to choose, and the list would lie over what comes next.
  const isWhole = isTyped && matches.length === 1 && matches[0]?.label === text;
  const isOpen = keys.open && !isWhole;
  const idOf = (index: number) => `${listId}-${index}`;

  useEffect(() => {
    if (keys.at >= 0) list.current?.children[keys.at]?.scrollIntoView?.({ block: "nearest" });
  }, [keys.at]);

  function take(index: number) {
    keys.hide();
    setTyped(false);
    const match = matches[index];
    if (match !== undefined) onPick(match);
    else onMake?.(text.trim());
  }

  const optionAttributes = (index: number) => ({
    id: idOf(index),
    role: "option",
    "aria-selected": index === keys.at,
    onClick: () => take(index),
  });

  return (
    <FieldFrame label={label} labelHidden={labelHidden} hint={hint} problem={problem}>
      {(ties) => (
        <div className={styles["place"]}>
          <input
            {...ties}
            ref={ref}
            type="text"
            role="combobox"
            autoComplete="off"
            spellCheck={false}
            required={required}
            aria-autocomplete="list"
            aria-expanded={isOpen}
            aria-controls={listId}
            aria-activedescendant={keys.at >= 0 ? idOf(keys.at) : undefined}
            value={text}
            onChange={(event) => {
              onText(event.target.value);
              setTyped(event.target.value !== "");
              keys.show();
            }}
            onFocus={() => {
              isFirstPress.current = true;
              // What is wrong with the field is read before another name is looked for.
              if (problem === undefined) keys.show();
            }}
            onClick={(event) => {
              keys.show();
              // The next name takes the place of the one that stands there; a second press sets the caret.
              if (isFirstPress.current && !isTyped) event.currentTarget.select();
              isFirstPress.current = false;
            }}
            onBlur={() => {
              keys.hide();
              setTyped(false);
            }}
            onKeyDown={keys.onKeyDown}
            className={classes(fieldStyles["input"], fieldStyles["between"])}
          />
          <div
            ref={list}
            id={listId}
            role="listbox"
            aria-label={label}
            hidden={!isOpen}
            onMouseDown={(event) => event.preventDefault()}
            className={styles["list"]}
          >
            {matches.map((option, index) => (
              <div key={option.id} {...optionAttributes(index)} className={styles["option"]}>
                <Name>{option.label}</Name>
                {option.detail !== undefined && <span className={styles["detail"]}>{option.detail}</span>}
              </div>
            ))}
            {canMake && (
              <div
                {...optionAttributes(matches.length)}
                className={classes(styles["option"], styles["make"])}
              >
                {sayMake(text.trim())}
              </div>
            )}
          </div>
        </div>
      )}
    </FieldFrame>
  );
}
