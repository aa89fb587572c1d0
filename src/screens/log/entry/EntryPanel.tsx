import {
  type ClipboardEvent,
  type KeyboardEvent,
  type ReactNode,
  useEffect,
  useId,
  useLayoutEffect,
  useRef,
  useState,
} from "react";
import {
  decimalsOf,
  differenceShown,
  formatLapTime,
  formatSeconds,
  type Problem,
  remarkInWords,
  type ShownTime,
  sayFewDecimals,
} from "#domain";
import { type EntryContext, exampleOf, type Hand, questionOf } from "#entry";
import { Button } from "#ui/Button.tsx";
import { sayProblem } from "#ui/FieldFrame.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { UnstoredLines } from "../typed/UnstoredLines.tsx";
import { Choices, firstChoice } from "./Choices.tsx";
import { EntryHelp } from "./EntryHelp.tsx";
import styles from "./EntryPanel.module.css";
import { Pad } from "./Pad.tsx";
import { PadTools } from "./PadTools.tsx";
import { TypedOverLines } from "./TypedOverLines.tsx";
import { useDigitsHome } from "./useDigitsHome.ts";
import type { Entry } from "./useEntry.ts";
import { useIsTouch } from "./useIsTouch.ts";
import type { PadState } from "./usePad.ts";

/** More characters than this want the whole width of a phone. */
const longest = 10;

interface EntryPanelProps {
  readonly entry: Entry;
  readonly context: EntryContext;
  readonly pad: PadState;
  /** Whether the run is measured against no PB. */
  readonly isApart: boolean;
  /** Number the next lap will have. */
  readonly lapNumber: number;
  /** Said once when a lap is in the book: "Lap 4 stored, 1:23.456". */
  readonly said: string;
  /** Opens the run's last lap for editing; absent where it has none. */
  readonly onEditLast: (() => void) | undefined;
  /** A lap is being edited: the line is out of reach. */
  readonly isCovered: boolean;
  /** Where the line belongs, asked right behind the field; Enter stores nothing until it is answered. */
  readonly question: ReactNode;
}

/** The id of the field in the page: the focus comes back to it from the editor that was opened from here. */
export const fieldId = "entry-field";

/** One text field, what the text will become, and on touch the pad. Enter adds the lap. */
export function EntryPanel(props: EntryPanelProps) {
  const { entry, context, pad, isApart, lapNumber, said, onEditLast, isCovered, question } = props;
  const { text, reading, standing } = entry;
  const panel = useRef<HTMLElement>(null);
  const field = useRef<HTMLInputElement>(null);
  const [isWriting, setWriting] = useState(false);
  const isPadShown = pad.isOpen;
  const isTouch = useIsTouch();
  const hand = pad.isThere || isTouch ? "pad" : "keys";
  const id = useId();
  const focus = () => field.current?.focus({ preventScroll: true });
  useEffect(() => field.current?.focus({ preventScroll: true }), []);
  // What was refused or asked about is written over by the next key; before that key, for laps are typed blind.
  useLayoutEffect(() => {
    const isHeld = standing.kind === "refused" || standing.kind === "asking";
    if (isHeld && document.activeElement === field.current) field.current?.select();
  }, [standing]);
  useDigitsHome(
    isCovered
      ? undefined
      : (digit) => {
          entry.typeDigit(digit);
          focus();
        },
  );
  const isAllSelected = useRef(false);
  const lookAtSelection = () => {
    const { selectionStart = 0, selectionEnd = 0, value = "" } = field.current ?? {};
    isAllSelected.current = value !== "" && selectionStart === 0 && selectionEnd === value.length;
  };
  // Where a line belongs is asked before how it was meant.
  const choices = reading?.ok === false && !entry.isStray ? (reading.problem.choices ?? []) : [];

  const onKeyDown = (event: KeyboardEvent) => {
    lookAtSelection();
    const isUndo = (event.ctrlKey || event.metaKey) && !event.shiftKey && event.key.toLowerCase() === "z";
    const deed =
      event.key === "Enter"
        ? () => entry.submit(event.timeStamp)
        : event.key === "Escape"
          ? entry.escape
          : isUndo
            ? entry.bringBack
            : event.key === "ArrowUp" && text === ""
              ? onEditLast
              : event.key === "ArrowDown" && choices.length > 0
                ? () => panel.current?.querySelector<HTMLElement>(firstChoice)?.focus()
                : undefined;
    if (deed === undefined) return;
    // What was typed comes back before the last write is taken back.
    if (isUndo) event.stopPropagation();
    event.preventDefault();
    if (!event.repeat) deed();
  };
  const onPaste = (event: ClipboardEvent) => {
    lookAtSelection();
    const pasted = event.clipboardData.getData("text/plain");
    // One row of a table has tabs and is shown before it is taken, like many.
    if (!/[\r\n\t\u2028\u2029]/.test(pasted.trim())) return;
    event.preventDefault();
    entry.setPasted(pasted);
  };
  const isWrong = reading?.ok === false && standing.kind === "refused";
  return (
    <section ref={panel} className={styles["panel"]} aria-label="Entry">
      <UnstoredLines entry={entry} />
      <HalfTyped of={entry.kept} isFree={text === ""} onTakeUp={entry.takeUp} />
      <TypedOverLines entry={entry} onBack={focus} />
      <div
        className={styles["line"]}
        data-long={text.length > longest || undefined}
        data-pad={pad.isThere ? (isPadShown ? "open" : "folded") : undefined}
      >
        <label className={styles["label"]} htmlFor={fieldId}>
          Lap {lapNumber}
        </label>
        <input
          id={fieldId}
          ref={field}
          data-home
          className={styles["field"]}
          value={text}
          onChange={(event) => {
            entry.setText(event.target.value, isAllSelected.current);
            isAllSelected.current = false;
          }}
          onKeyDown={onKeyDown}
          onPaste={onPaste}
          onClick={() => pad.setOpen(true)}
          onBlur={() => setWriting(false)}
          inputMode={pad.isThere && !isWriting ? "none" : "text"}
          enterKeyHint="done"
          autoComplete="off"
          autoCapitalize="off"
          autoCorrect="off"
          spellCheck={false}
          aria-describedby={`${id}-reading`}
          aria-invalid={isWrong || undefined}
          placeholder="time"
        />
        <div id={`${id}-reading`} className={styles["reading"]}>
          <ReadingOf entry={entry} context={context} isApart={isApart} lapNumber={lapNumber} hand={hand} />
        </div>
        {isPadShown && (
          <div className={styles["tools"]}>
            <PadTools
              onClear={text === "" ? undefined : entry.empty}
              onBringBack={entry.bringBack}
              onHide={() => pad.setOpen(false)}
            />
          </div>
        )}
        {pad.isThere && !pad.isOpen && text === "" && (
          <Button
            size="between"
            onPointerDown={(event) => event.preventDefault()}
            onClick={() => pad.setOpen(true)}
            className={styles["add"]}
          >
            Keys
          </Button>
        )}
        {!pad.isOpen && (!pad.isThere || text !== "") && !entry.isStray && (
          <Button
            variant="primary"
            size="between"
            onClick={({ timeStamp }) => {
              focus();
              entry.submit(timeStamp);
            }}
            className={styles["add"]}
          >
            Add
          </Button>
        )}
      </div>
      {choices.length > 0 && (
        <Choices
          choices={choices}
          onChoose={(choice, at) => {
            focus();
            entry.choose(choice, at);
          }}
          onLeave={focus}
        />
      )}
      {question}
      <LiveRegion message={isWrong ? sayProblem(reading.problem) : said} />
      {isPadShown ? (
        <Pad
          text={text}
          onText={(next) => {
            entry.setText(next);
            focus();
          }}
          onDigit={(digit) => {
            entry.typeDigit(digit);
            focus();
          }}
          onClear={entry.empty}
          onAdd={({ timeStamp }) => entry.submit(timeStamp)}
          onNote={() => {
            if (!text.includes("/")) entry.setText(`${text} / `);
            setWriting(true);
            field.current?.blur();
            window.requestAnimationFrame(() => {
              setWriting(true);
              field.current?.focus();
            });
          }}
          sectors={context.sectors}
          lapNumber={lapNumber}
        />
      ) : (
        !pad.isThere && <EntryHelp sectors={context.sectors} />
      )}
    </section>
  );
}

interface ReadingOfProps extends Pick<EntryPanelProps, "entry" | "context" | "isApart" | "lapNumber"> {
  readonly hand: Hand;
}

function ReadingOf({ entry, context, isApart, lapNumber, hand }: ReadingOfProps) {
  const { reading, standing } = entry;
  // The first digits of a time are no mistake yet.
  if (reading === undefined || (standing.kind === "typing" && /^\s*\d{1,3}\s*$/.test(entry.text)))
    return <p className={styles["about"]}>{emptyHint(context)}</p>;
  const whereFirst = `Say first where it belongs${hand === "pad" ? "" : ": Tab goes to the answers"}`;
  if (!reading.ok) {
    if (entry.isStray) return <p className={styles["ask"]}>{whereFirst}</p>;
    return (
      <p className={styles["problem"]} data-refused={standing.kind === "refused" || undefined}>
        {sayProblem(withoutChoices(reading.problem))}
      </p>
    );
  }
  const { ms, decimals = 3, remarks, note, sectors } = reading.lap;
  const about = [
    `lap ${lapNumber}`,
    ms === undefined || isApart ? undefined : toBest({ ms, decimals }, context),
    sayFewDecimals(reading.lap, context.displayDecimals),
    ...remarks.map(remarkInWords),
    sectors && `${sectors.length} sectors`,
    note && "with a note",
  ];
  return (
    <>
      <p className={styles["time"]}>
        {ms === undefined ? "no time" : formatLapTime(ms, Math.max(decimals, decimalsOf(ms)))}
      </p>
      {standing.kind === "homeless" ? (
        <p className={styles["ask"]}>{whereFirst}</p>
      ) : standing.kind === "asking" ? (
        <p className={styles["ask"]} role="alert">
          {questionOf(standing, hand) ?? "The same lap again?"}
        </p>
      ) : (
        <p className={styles["about"]}>{about.filter(Boolean).join(" · ")}</p>
      )}
    </>
  );
}

/** The choices stand as buttons under the line and need no words. */
function withoutChoices(problem: Problem): Problem {
  return problem.choices === undefined ? problem : { ...problem, right: "Which was it?" };
}

/** What may be typed, by the example of the driver's own last lap. */
function emptyHint(context: EntryContext): string {
  const example = exampleOf(context);
  if (example === undefined) return "Type the whole time: 1:23.456";
  const { typed, whole } = example;
  return typed === whole ? `Type the whole time: ${whole}` : `${typed} is enough for ${whole}`;
}

/** To no more decimals than both are known to. */
function toBest(lap: ShownTime, { pbMs, pbDecimals }: EntryContext): string | undefined {
  if (pbMs === undefined) return undefined;
  const { ms, decimals } = differenceShown({ ms: pbMs, decimals: pbDecimals }, lap);
  if (ms === 0) return "the same as your PB";
  return `${formatSeconds(Math.abs(ms), decimals)} ${ms > 0 ? "off" : "faster than"} PB`;
}
