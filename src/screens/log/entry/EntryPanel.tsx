import {
  type ClipboardEvent,
  type KeyboardEvent,
  type ReactNode,
  useEffect,
  useId,
  useRef,
  useState,
} from "react";
import { differenceShown, formatLapTime, formatSeconds, remarkInWords, type ShownTime } from "#domain";
import { type EntryContext, parseEntry, questionOf } from "#entry";
import { Button } from "#ui/Button.tsx";
import { sayProblem } from "#ui/FieldFrame.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { UnstoredLines } from "../typed/UnstoredLines.tsx";
import { EntryHelp } from "./EntryHelp.tsx";
import styles from "./EntryPanel.module.css";
import { Pad } from "./Pad.tsx";
import type { Entry } from "./useEntry.ts";
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
  /** Where the line belongs, asked right behind the field; Enter stores nothing until it is answered. */
  readonly question: ReactNode;
}

/** The id of the field in the page: the focus comes back to it from the editor that was opened from here. */
export const fieldId = "entry-field";

/** One text field, what the text will become, and on touch the pad. Enter adds the lap. */
export function EntryPanel(props: EntryPanelProps) {
  const { entry, context, pad, isApart, lapNumber, said, onEditLast, question } = props;
  const { text, reading, standing } = entry;
  const field = useRef<HTMLInputElement>(null);
  const [isWriting, setWriting] = useState(false);
  const isPadShown = pad.isOpen;
  const id = useId();
  useEffect(() => field.current?.focus({ preventScroll: true }), []);

  const onKeyDown = (event: KeyboardEvent) => {
    const isUndo = (event.ctrlKey || event.metaKey) && !event.shiftKey && event.key.toLowerCase() === "z";
    const deed =
      event.key === "Enter"
        ? () => entry.submit(event.timeStamp)
        : event.key === "Escape"
          ? text === ""
            ? entry.bringBack
            : entry.empty
          : isUndo
            ? entry.bringBack
            : event.key === "ArrowUp" && text === ""
              ? onEditLast
              : undefined;
    if (deed === undefined) return;
    // What was typed comes back before the last write is taken back.
    if (isUndo) event.stopPropagation();
    event.preventDefault();
    if (!event.repeat) deed();
  };
  const onPaste = (event: ClipboardEvent) => {
    const pasted = event.clipboardData.getData("text/plain");
    // One row of a table has tabs and is shown before it is taken, like many.
    if (!/[\r\n\t\u2028\u2029]/.test(pasted.trim())) return;
    event.preventDefault();
    entry.setPasted(pasted);
  };
  const isWrong = reading?.ok === false && standing.kind === "refused";
  return (
    <section className={styles["panel"]} aria-label="Entry">
      <UnstoredLines entry={entry} />
      <HalfTyped of={entry.kept} isFree={text === ""} onTakeUp={entry.takeUp} />
      <div className={styles["line"]} data-long={text.length > longest || undefined}>
        <label className={styles["label"]} htmlFor={fieldId}>
          Lap {lapNumber}
        </label>
        <input
          id={fieldId}
          ref={field}
          data-home
          className={styles["field"]}
          value={text}
          onChange={(event) => entry.setText(event.target.value)}
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
          <ReadingOf
            entry={entry}
            context={context}
            isApart={isApart}
            lapNumber={lapNumber}
            isPadShown={isPadShown}
          />
        </div>
        {pad.isThere && !pad.isOpen && (
          <Button
            size="between"
            onPointerDown={(event) => event.preventDefault()}
            onClick={() => pad.setOpen(true)}
            className={styles["add"]}
          >
            Keys
          </Button>
        )}
        {!pad.isThere && !entry.isStray && (
          <Button
            variant="primary"
            size="between"
            onClick={({ timeStamp }) => {
              entry.submit(timeStamp);
              field.current?.focus({ preventScroll: true });
            }}
            className={styles["add"]}
          >
            Add
          </Button>
        )}
      </div>
      {question}
      <LiveRegion message={isWrong ? sayProblem(reading.problem) : said} />
      {isPadShown ? (
        <Pad
          text={text}
          onText={(next) => {
            entry.setText(next);
            field.current?.focus({ preventScroll: true });
          }}
          onAdd={entry.submit}
          onClose={() => pad.setOpen(false)}
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
  readonly isPadShown: boolean;
}

function ReadingOf({ entry, context, isApart, lapNumber, isPadShown }: ReadingOfProps) {
  const { reading, standing } = entry;
  if (reading === undefined) return <p className={styles["about"]}>{emptyHint(context)}</p>;
  if (!reading.ok) {
    return (
      <p className={styles["problem"]} data-refused={standing.kind === "refused" || undefined}>
        {sayProblem(reading.problem)}
      </p>
    );
  }
  const { ms, decimals, remarks, note, sectors } = reading.lap;
  const about = [
    `lap ${lapNumber}`,
    ms === undefined || isApart ? undefined : toBest({ ms, decimals }, context),
    ...remarks.map(remarkInWords),
    sectors && `${sectors.length} sectors`,
    note && "with a note",
  ];
  return (
    <>
      <p className={styles["time"]}>{ms === undefined ? "no time" : formatLapTime(ms, decimals)}</p>
      {standing.kind === "homeless" ? (
        <p className={styles["ask"]}>
          Say first where it belongs{isPadShown ? "" : ": Tab goes to the answers"}
        </p>
      ) : standing.kind === "asking" ? (
        <p className={styles["ask"]} role="alert">
          {questionOf(standing, isPadShown ? "pad" : "keys") ?? "The same lap again?"}
        </p>
      ) : (
        <p className={styles["about"]}>{about.filter(Boolean).join(" · ")}</p>
      )}
    </>
  );
}

/** The last digits of a lap like those of this evening, where they would be taken for it. */
function emptyHint(context: EntryContext): string {
  const { usualMs, paceTimes, displayDecimals } = context;
  if (usualMs === undefined) return "Type the whole time: 1:23.456";
  const far = (ms: number) => Math.abs(ms - usualMs);
  const example = paceTimes.reduce((best, ms) => (far(ms) < far(best) ? ms : best), paceTimes[0] ?? usualMs);
  const whole = formatLapTime(example, displayDecimals);
  const digits = whole.replace(/[^\d]/g, "");
  const short = [1, 2]
    .map((seconds) => digits.slice(-seconds - displayDecimals))
    .find((typed) => isReadAs(typed, whole, context));
  return short === undefined ? `Type the whole time: ${whole}` : `${short} is enough for ${whole}`;
}

function isReadAs(typed: string, whole: string, context: EntryContext): boolean {
  const reading = parseEntry(typed, context);
  return reading.ok && formatLapTime(reading.lap.ms ?? 0, reading.lap.decimals) === whole;
}

/** To no more decimals than both are known to. */
function toBest(lap: ShownTime, { pbMs, pbDecimals }: EntryContext): string | undefined {
  if (pbMs === undefined) return undefined;
  const { ms, decimals } = differenceShown({ ms: pbMs, decimals: pbDecimals }, lap);
  if (ms === 0) return "level with your PB";
  return `${formatSeconds(Math.abs(ms), decimals)} ${ms > 0 ? "off" : "under"} PB`;
}
