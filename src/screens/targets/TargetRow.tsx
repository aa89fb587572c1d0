import { useLayoutEffect, useRef } from "react";
import { WayPicture } from "#charts/way/WayPicture.tsx";
import { isReached } from "#combo";
import { archiveTarget, deleteTarget } from "#db";
import {
  type CalendarDate,
  type Id,
  isTimeKind,
  type Preferences,
  sayDate,
  type Target,
  type TimeKind,
} from "#domain";
import { type DrivenCombo, useFigures, useWrite } from "#live";
import type { TargetState, TargetStep, TargetWay, WhereToFind } from "#stats";
import { Button } from "#ui/Button.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { keepInSight } from "#ui/keepInSight.ts";
import { Name } from "#ui/Name.tsx";
import { ProgressBar } from "#ui/ProgressBar.tsx";
import { useFocusBack } from "#ui/useFocusBack.ts";
import {
  sayChanged,
  sayEarlier,
  sayKnownFigure,
  sayProgress,
  sayStanding,
  sayTarget,
  sayTargetFigure,
  sayTargetValue,
  sayWay,
  targetFigure,
} from "#words";
import { Outlook } from "./Outlook.tsx";
import { RenewTarget } from "./RenewTarget.tsx";
import { TargetForm } from "./TargetForm.tsx";
import styles from "./TargetRow.module.css";
import { type FrontForm, useTypedTarget } from "./useTypedTarget.ts";
import { Where } from "./Where.tsx";

interface TargetRowProps {
  readonly target: Target;
  readonly combo: DrivenCombo;
  /** Undefined until it has been worked out. */
  readonly state: TargetState | undefined;
  /** How its figure came along; undefined until it has been worked out, and where it has none. */
  readonly way: TargetWay | undefined;
  /** Where what is still to go could come from; undefined until it has been worked out, and where nothing is. */
  readonly where: WhereToFind | undefined;
  readonly preferences: Preferences;
  readonly today: CalendarDate;
  readonly front: FrontForm;
  /** It has gone from here: the focus goes on elsewhere. */
  readonly onGone: () => void;
  /** It has just been set: it is scrolled to and has the focus. */
  readonly isFresh: boolean;
  /** Another one has been set in its place. */
  readonly onRenewed: (targetId: Id) => void;
}

/** One target: what is wanted, how far it has come, and what can be done with it. */
export function TargetRow(props: TargetRowProps) {
  const { target, combo, state, way, where, preferences, today, front, onGone, isFresh, onRenewed } = props;
  const write = useWrite();
  const editing = useTypedTarget(`target ${target.id}`, front);
  const edit = useRef<HTMLButtonElement>(null);
  useFocusBack(editing.isOpen || undefined, () => edit.current);
  const { id, kind, value, by, archivedAt } = target;
  const isArchived = archivedAt !== undefined;
  const name = sayTarget(target);
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    if (!isFresh || heading.current === null) return;
    heading.current.focus({ preventScroll: true });
    return keepInSight(heading.current);
  }, [isFresh]);

  const archive = async () => {
    const change = await write((book) => archiveTarget(book, { id, isArchived: !isArchived }), {
      isUndoOffered: true,
    });
    if (change !== undefined) onGone();
  };
  const remove = async () => {
    if (await write((book) => deleteTarget(book, id), { isUndoOffered: true })) onGone();
  };
  if (editing.isOpen)
    return (
      <li className={styles["row"]}>
        <TargetForm
          editing={editing}
          combos={[combo]}
          target={target}
          preferences={preferences}
          today={today}
          onClose={editing.close}
        />
      </li>
    );
  return (
    <li className={styles["row"]}>
      <HalfTyped of={editing.kept} />
      <div className={styles["head"]}>
        <h3 ref={heading} tabIndex={-1} className={styles["name"]}>
          {targetFigure(target)} <span className={styles["value"]}>{sayTargetValue(kind, value)}</span>
        </h3>
        {by !== undefined && <p className={styles["by"]}>by {sayDate(by)}</p>}
      </div>
      <Written target={target} />
      {state === undefined ? (
        <p className={styles["figures"]}>Working out how far it has come</p>
      ) : state.standing.kind === "open" && isTimeKind(kind) && !isArchived ? (
        <OpenTarget target={target} kind={kind} state={state} way={way} today={today} />
      ) : (
        <>
          {!isArchived && <WayOf state={state} way={way} steps={[]} today={today} />}
          <ProgressOf state={state} />
          <p className={styles["figures"]}>{figuresOf(state).join(" · ")}</p>
        </>
      )}
      {where !== undefined && !isArchived && <Where comboId={combo.id} where={where} />}
      <Changes target={target} />
      <div className={styles["buttons"]}>
        {state?.standing.kind === "missed" && !isArchived && (
          <RenewTarget target={target} now={state.now?.value} today={today} onRenewed={onRenewed} />
        )}
        <Button ref={edit} aria-label={`Edit: ${name}`} onClick={editing.open}>
          Edit
        </Button>
        <Button
          aria-label={`${isArchived ? "Take out of the archive" : "Archive"}: ${name}`}
          onClick={archive}
        >
          {isArchived ? "Take out of the archive" : "Archive"}
        </Button>
        <Button variant="quiet" aria-label={`Delete: ${name}`} onClick={remove}>
          Delete
        </Button>
      </div>
    </li>
  );
}

/** What the driver wrote about it. */
function Written({ target: { process, why, note } }: { readonly target: Target }) {
  const written = [
    ["To do", process],
    ["What it is for", why],
    ["Note", note],
  ] as const;
  return written.map(
    ([what, text]) =>
      text !== undefined && (
        <p key={what}>
          {what}: <Name>{text}</Name>
        </p>
      ),
  );
}

/** What it was before it was changed. */
function Changes({ target: { earlier } }: { readonly target: Target }) {
  const changed = sayChanged(earlier);
  if (changed === undefined) return null;
  return (
    <Disclosure title="Changed" answer={changed} level={4}>
      <ul className={styles["earlier"]}>
        {earlier?.toReversed().map((was) => (
          <li key={was.until}>{sayEarlier(was)}</li>
        ))}
      </ul>
    </Disclosure>
  );
}

interface OpenTargetProps {
  readonly target: Target;
  readonly kind: TimeKind;
  readonly state: TargetState;
  readonly way: TargetWay | undefined;
  readonly today: CalendarDate;
}

/** A target still to be reached: its way as a picture, how far it has come, and its chance. */
function OpenTarget({ target, kind, state, way, today }: OpenTargetProps) {
  const { comboId, laps, value, by } = target;
  const { value: outlook } = useFigures("targetOutlook", { comboId, kind, laps, value, by, today });
  const steps = outlook?.known ? outlook.value.milestones : [];
  return (
    <>
      <WayOf state={state} way={way} steps={steps} today={today} />
      <ProgressOf state={state} />
      <Outlook outlook={outlook} kind={kind} by={by} today={today} figures={figuresOf(state).join(" · ")} />
    </>
  );
}

interface WayOfProps {
  readonly state: TargetState;
  readonly way: TargetWay | undefined;
  readonly steps: readonly TargetStep[];
  readonly today: CalendarDate;
}

function WayOf({ state: { target, standing, now }, way, steps, today }: WayOfProps) {
  if (way === undefined) return null;
  const { kind, value, by, setOn, start } = target;
  // Once driven it stands until it is beaten.
  const isHeld = kind === "best" || kind === "meanOf";
  const picture = {
    ...{ value, by, setOn, start, today, steps },
    points: way.points,
    isStepped: isHeld,
  };
  const last = way.points.at(-1);
  const isNow = isHeld && standing.kind === "open";
  const end = last
    ? `${isNow ? "now " : ""}${sayTargetFigure(kind, last)}`
    : start === undefined
      ? ""
      : sayKnownFigure(kind, start);
  return (
    <WayPicture way={picture} wanted={sayTargetValue(kind, value)} end={end} label={sayWay(target, now)} />
  );
}

/** How it stands, and how far it has come. */
function ProgressOf({ state }: { readonly state: TargetState }) {
  const { standing, progress } = state;
  // One that was there when it was set, and is not now, has come no way: a bar would run backwards.
  const hasWay = progress.known && (isReached(standing) || progress.value.progress < 1);
  // What was driven after its date says nothing of a target that was missed.
  if (hasWay && standing.kind !== "missed")
    return (
      <ProgressBar
        label={<strong>{sayStanding(state)}</strong>}
        // What stood there before it was set has come no way since, and is there.
        share={isReached(standing) ? 1 : progress.value.progress}
        text={sayProgress(state)}
      />
    );
  return (
    <p>
      <strong>{sayStanding(state)}</strong> {standing.kind === "open" && sayProgress(state)}
    </p>
  );
}

/** Its figure when it was set, and now. */
function figuresOf({ target: { kind, start, setOn }, standing, now }: TargetState): readonly string[] {
  return [
    start !== undefined && `${sayKnownFigure(kind, start)} on ${sayDate(setOn)}, when it was set`,
    now !== undefined && standing.kind !== "missed" && `${sayTargetFigure(kind, now)} now`,
  ].filter((part) => part !== false);
}
