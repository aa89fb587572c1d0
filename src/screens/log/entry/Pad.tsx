import type { PointerEvent, SyntheticEvent } from "react";
import { useState } from "react";
import { type RemarkKind, remarksOnPad } from "#domain";
import { Button } from "#ui/Button.tsx";
import styles from "./Pad.module.css";
import { PadSign } from "./PadSign.tsx";
import { pressKey, remarksIn, toggleRemark, toggleSign } from "./padText.ts";
import { useLongPress } from "./useLongPress.ts";

interface PadProps {
  readonly text: string;
  readonly onText: (text: string) => void;
  /** A digit; it may begin a new line. */
  readonly onDigit: (digit: string) => void;
  readonly onClear: () => void;
  /** What the main key says: "Add". */
  readonly deed?: string;
  /** With the event of the press, whose time stamp says when it was. */
  readonly onAdd: (event: SyntheticEvent) => void;
  /** The driver wants to write words: give them the device's keyboard. */
  readonly onNote: () => void;
  /** Number of the layout's sectors, which are typed with spaces between them. */
  readonly sectors: number | undefined;
  /** Number of the lap that is typed: for another one the second row of remarks is closed again. */
  readonly lapNumber: number;
}

const digitRows = [
  ["1", "2", "3"],
  ["4", "5", "6"],
  ["7", "8", "9"],
] as const;

/** So many remarks stand beside the digits, and one key for all others. */
const besideDigits = 3;

/** Keeps the focus in the entry line, so that a keyboard beside the pad goes on working. */
const keepFocus = (event: PointerEvent) => event.preventDefault();

/** Keys for the thumb, in place of the phone's keyboard. */
export function Pad(props: PadProps) {
  const { text, onText, onDigit, onClear, deed = "Add", onAdd, onNote, sectors, lapNumber } = props;
  const [moreOf, setMoreOf] = useState<number>();
  const isMore = moreOf === lapNumber;
  const backspace = useLongPress(() => onText([...text].slice(0, -1).join("")), onClear);
  const present = remarksIn(text);
  const often = remarksOnPad("often");
  const remark = ({ kind, word }: { readonly kind: RemarkKind; readonly word: string }) => (
    <button
      key={kind}
      type="button"
      className={styles["remark"]}
      aria-pressed={present.includes(kind)}
      onClick={() => onText(toggleRemark(text, kind))}
    >
      {word}
    </button>
  );
  const key = (sign: string, press: () => void, name = sign) => (
    <button
      key={sign}
      type="button"
      className={styles["key"]}
      data-word={sign.length > 3 || undefined}
      aria-label={name}
      onClick={press}
    >
      {sign}
    </button>
  );
  const sign = (of: string, name: string) => key(of, () => onText(pressKey(text, of)), name);
  const digits = (row: readonly string[]) => row.map((digit) => key(digit, () => onDigit(digit)));
  const space = key("space", () => onText(`${text} `));
  const note = key("note", onNote);
  // Where sectors are typed the space is wanted at every lap, and the note stands behind "more"; else the other way round.
  const hasSectors = sectors !== undefined && sectors > 1;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: holds the focus in the entry line, offers nothing itself
    <div className={styles["pad"]} onPointerDown={keepFocus} onMouseDown={(event) => event.preventDefault()}>
      {isMore && (
        <div className={styles["more"]} data-a-row>
          {[...often.slice(besideDigits), ...remarksOnPad("seldom")].map(remark)}
          {hasSectors ? note : sectors === undefined && space}
        </div>
      )}
      <div className={styles["often"]}>
        {often.slice(0, besideDigits).map(remark)}
        <button
          type="button"
          className={styles["remark"]}
          aria-expanded={isMore}
          onClick={() => setMoreOf(isMore ? undefined : lapNumber)}
        >
          more
        </button>
      </div>
      <div className={styles["keys"]}>
        {digits(digitRows[0])}
        <button type="button" className={styles["key"]} aria-label="backspace" {...backspace}>
          <PadSign of="backspace" />
        </button>
        {digits(digitRows[1])}
        {sign(":", "colon")}
        {digits(digitRows[2])}
        {sign(".", "point")}
        {key("+/−", () => onText(toggleSign(text)), "relative: plus or minus")}
        {digits(["0"])}
        {hasSectors ? space : note}
        <Button variant="primary" className={styles["key"]} onClick={onAdd}>
          {deed}
        </Button>
      </div>
    </div>
  );
}
