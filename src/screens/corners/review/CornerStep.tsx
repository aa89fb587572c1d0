import { type FormEvent, type KeyboardEvent, useEffect, useId, useRef, useState } from "react";
import type { Corner, GapScale } from "#domain";
import { readGaps, type SeenCorner, writeGaps } from "#entry";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { sayProblem } from "#ui/FieldFrame.tsx";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { Name } from "#ui/Name.tsx";
import { useMedia } from "#ui/useMedia.ts";
import { saySeenCorner } from "#words";
import { CornerKind } from "./CornerKind.tsx";
import { CrossSections } from "./CrossSections.tsx";
import { roadOf } from "./crossSection.ts";
import { GapHelp } from "./GapHelp.tsx";
import styles from "./Review.module.css";
import type { SaidKind } from "./reviewDraft.ts";
import { SeenWords } from "./SeenWords.tsx";

interface CornerStepProps {
  readonly corner: Corner;
  /** "3 of 10". */
  readonly progress: string;
  /** What was seen at the corner before, in words. */
  readonly before: string | undefined;
  readonly scale: GapScale;
  readonly line: string;
  readonly onLine: (line: string) => void;
  /** What stood in the line before it was emptied. */
  readonly emptied: string | undefined;
  readonly onEmpty: () => void;
  /** What the layout does not know of it. */
  readonly asks: { readonly bend: boolean; readonly after: boolean };
  readonly kind: SaidKind;
  readonly onKind: (kind: SaidKind) => void;
  /** After it comes the table of all. */
  readonly isLast: boolean;
  readonly onNext: () => void;
  readonly onBack: (() => void) | undefined;
  /** The driver came from another corner: the focus goes on here. */
  readonly isReached: boolean;
}

const nothing: SeenCorner = {};

/** One corner of the replay: one line, or the car drawn on the road; what is typed and what is dragged is one text. */
export function CornerStep(props: CornerStepProps) {
  const { corner, progress, before, scale, line, onLine, asks, kind, onKind, isLast, onNext, onBack } = props;
  const { emptied, onEmpty, isReached } = props;
  const id = useId();
  const isTouch = useMedia("(pointer: coarse)");
  const isLow = useMedia("(max-height: 700px)");
  const field = useRef<HTMLInputElement>(null);
  const box = useRef<HTMLFormElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const [isRefused, setRefused] = useState(false);
  useEffect(() => {
    // On touch the field would bring up the keyboard over the drawing.
    if (isTouch) {
      if (isReached) heading.current?.focus({ preventScroll: true });
      // Where there is little room, a review that is opened begins with its corner, not with what stands over it.
      if (isReached || isLow) box.current?.scrollIntoView?.({ block: "start" });
    } else field.current?.focus({ preventScroll: !isReached });
  }, [isTouch, isReached, isLow]);

  const reading = readGaps(line, scale, roadOf(corner, scale.carWidth));
  if (reading.ok && isRefused) setRefused(false);
  const seen = reading.ok ? reading.seen : nothing;
  const isEmpty = line.trim() === "" && kind.bend === undefined && kind.after === undefined;
  const change = (next: SeenCorner) => onLine(writeGaps(next, scale));
  const next = (event: FormEvent) => {
    event.preventDefault();
    if (reading.ok) return onNext();
    setRefused(true);
    field.current?.focus();
    field.current?.setSelectionRange(reading.problem.at, reading.problem.at + reading.problem.length);
  };
  const putBack = line === "" && emptied !== undefined ? () => onLine(emptied) : undefined;
  const onKeyDown = (event: KeyboardEvent) => {
    const isUndo = (event.ctrlKey || event.metaKey) && !event.shiftKey && event.key.toLowerCase() === "z";
    if (isUndo && putBack !== undefined) {
      // Not the logbook's last deed: that stands elsewhere.
      event.stopPropagation();
      event.preventDefault();
      return putBack();
    }
    const deed =
      event.key === "ArrowUp"
        ? onBack
        : event.key === "ArrowDown"
          ? onNext
          : event.key === "Escape"
            ? line === ""
              ? putBack
              : onEmpty
            : undefined;
    if (deed === undefined) return;
    event.preventDefault();
    if (!event.repeat) deed();
  };
  const typing = (
    <div className={styles["typing"]}>
      <label htmlFor={`${id}-line`}>Left at entry, apex and exit</label>
      <input
        id={`${id}-line`}
        ref={field}
        data-home
        className={styles["line"]}
        value={line}
        onChange={(event) => onLine(event.target.value)}
        onKeyDown={onKeyDown}
        enterKeyHint="next"
        autoComplete="off"
        autoCapitalize="off"
        autoCorrect="off"
        spellCheck={false}
        placeholder={scale.unit === "cars" ? "such as h . 0.3" : "such as 0.8 . 1.2"}
        aria-describedby={`${id}-reading`}
        aria-invalid={(isRefused && !reading.ok) || undefined}
      />
      <p
        id={`${id}-reading`}
        className={styles["reading"]}
        data-wrong={!reading.ok || undefined}
        data-refused={isRefused || undefined}
      >
        {reading.ok ? (
          <Name>
            {saySeenCorner(seen, scale) ||
              (isTouch ? "Nothing noted yet" : "Nothing noted: Enter skips this corner")}
          </Name>
        ) : (
          sayProblem(reading.problem)
        )}
      </p>
      {putBack !== undefined && (
        <Button
          size="between"
          className={styles["putBack"]}
          onClick={() => {
            putBack();
            field.current?.focus({ preventScroll: true });
          }}
        >
          Put back <Name>{emptied ?? ""}</Name>
        </Button>
      )}
    </div>
  );
  const kinds = (asks.bend || asks.after) && <CornerKind asks={asks} kind={kind} onKind={onKind} />;
  const drawing = (
    <CrossSections
      corner={corner}
      seen={seen}
      scale={scale}
      isHeld={!reading.ok}
      onGap={(place, metres) => {
        const { [place]: _, ...others } = seen;
        change(metres === undefined ? others : { ...others, [place]: metres });
      }}
    />
  );
  const words = <SeenWords seen={seen} onSeen={change} isHeld={!reading.ok} />;
  return (
    <form ref={box} noValidate aria-labelledby={`${id}-title`} className={styles["step"]} onSubmit={next}>
      {before !== undefined && <p className={styles["before"]}>{before}</p>}
      <LiveRegion message={isRefused && !reading.ok ? sayProblem(reading.problem) : ""} />
      <div className={styles["head"]}>
        <h2 id={`${id}-title`} ref={heading} tabIndex={-1} className={styles["title"]}>
          <span className={styles["corner"]}>Corner</span>{" "}
          <span className={styles["number"]}>{corner.number}</span>
          {corner.name !== undefined && (
            <>
              {" "}
              <Name>{corner.name}</Name>
            </>
          )}
        </h2>
        <p className={styles["progress"]}>{progress}</p>
      </div>
      {/* Whoever types has the line first; whoever drags, the drawing. */}
      <div className={styles["columns"]}>
        <div className={styles["column"]}>
          {isTouch ? (
            drawing
          ) : (
            <>
              {typing}
              {kinds}
              {words}
              <GapHelp unit={scale.unit} />
            </>
          )}
        </div>
        <div className={styles["column"]}>
          {isTouch ? (
            <>
              {words}
              {kinds}
              {typing}
              <GapHelp unit={scale.unit} />
            </>
          ) : (
            drawing
          )}
        </div>
      </div>
      <div className={styles["buttons"]}>
        <ButtonRow
          others={
            onBack && (
              <Button size="between" onClick={onBack}>
                Back
              </Button>
            )
          }
          main={
            <Button type="submit" variant="primary" size="between">
              {isEmpty ? `Skip corner ${corner.number}` : isLast ? "To the table" : "Next corner"}
            </Button>
          }
        />
      </div>
    </form>
  );
}
