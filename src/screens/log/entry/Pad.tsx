import { type PointerEvent, useState } from "react";
import { type RemarkKind, remarksOnPad } from "#domain";
import { Button } from "#ui/Button.tsx";
import styles from "./Pad.module.css";
import { pressKey, remarksIn, toggleRemark, toggleSign } from "./padText.ts";

interface PadProps {
  readonly text: string;
  readonly onText: (text: string) => void;
  /** With the time stamp of the press. */
  readonly onAdd: (at: number) => void;
  readonly onClose: () => void;
  /** The driver wants to write words: give them the device's keyboard. */
  readonly onNote: () => void;
  /** Number of the layout's sectors, which are typed with spaces between them. */
  readonly sectors: number | undefined;
  /** Number of the next lap: for each the pad stands on its first page. */
  readonly lapNumber: number;
}

const digits = ["1", "2", "3", "4", "5", "6", "7", "8", "9"];

/** Keeps the focus in the entry line, so that a keyboard beside the pad goes on working. */
const keepFocus = (event: PointerEvent) => event.preventDefault();

/** Keys for the thumb, in place of the phone's keyboard. */
export function Pad({ text, onText, onAdd, onClose, onNote, sectors, lapNumber }: PadProps) {
  const [moreOf, setMoreOf] = useState<number>();
  const isMore = moreOf === lapNumber;
  // Where nothing is known of sectors, the first ones can still be typed.
  const isSpaceShown = sectors === undefined ? isMore : sectors > 1;
  const present = remarksIn(text);
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
  const key = (sign: string, name = sign) => (
    <button
      key={sign}
      type="button"
      className={styles["key"]}
      aria-label={name}
      onClick={() => onText(pressKey(text, sign))}
    >
      {sign}
    </button>
  );
  const [row1, row2, row3] = [digits.slice(0, 3), digits.slice(3, 6), digits.slice(6)];
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: holds the focus in the entry line, offers nothing itself
    <div className={styles["pad"]} onPointerDown={keepFocus} onMouseDown={(event) => event.preventDefault()}>
      <div className={styles["remarks"]}>
        {remarksOnPad(isMore ? "seldom" : "often").map(remark)}
        <button
          type="button"
          className={styles["remark"]}
          aria-pressed={isMore}
          onClick={() => setMoreOf(isMore ? undefined : lapNumber)}
        >
          more
        </button>
        {isSpaceShown && (
          <button type="button" className={styles["remark"]} onClick={() => onText(`${text} `)}>
            space
          </button>
        )}
        <button type="button" className={styles["remark"]} aria-label="hide the keys" onClick={onClose}>
          <Hide />
        </button>
      </div>
      <div className={styles["keys"]}>
        {row1.map((digit) => key(digit))}
        <button
          type="button"
          className={styles["key"]}
          aria-label="backspace"
          onClick={() => onText([...text].slice(0, -1).join(""))}
        >
          <Backspace />
        </button>
        {row2.map((digit) => key(digit))}
        {key(":", "colon")}
        {row3.map((digit) => key(digit))}
        {key(".", "point")}
        <button
          type="button"
          className={styles["key"]}
          aria-label="relative: plus or minus"
          onClick={() => onText(toggleSign(text))}
        >
          +/−
        </button>
        {key("0")}
        <button type="button" className={styles["key"]} onClick={onNote}>
          note
        </button>
        <Button variant="primary" className={styles["key"]} onClick={({ timeStamp }) => onAdd(timeStamp)}>
          Add
        </Button>
      </div>
    </div>
  );
}

/** A line that goes down, on a sill. */
function Hide() {
  return (
    <svg
      width="22"
      height="20"
      viewBox="0 0 22 20"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.75"
      aria-hidden="true"
    >
      <path d="M4 5l7 7 7-7 M3 17h16" strokeLinejoin="round" strokeLinecap="round" />
    </svg>
  );
}

/** Drawn, because few fonts have the sign. */
function Backspace() {
  return (
    <svg
      width="28"
      height="20"
      viewBox="0 0 28 20"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.75"
      aria-hidden="true"
    >
      <path
        d="M9 2h17v16H9L2 10z M13.5 6.5l7 7 M20.5 6.5l-7 7"
        strokeLinejoin="round"
        strokeLinecap="round"
      />
    </svg>
  );
}
