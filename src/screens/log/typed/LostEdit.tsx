import { useEffect, useRef, useState } from "react";
import { addLap, bringBackLap, type Change } from "#db";
import type { Run } from "#domain";
import { type EntryContext, factsOf, sourceOf } from "#entry";
import { type FoundDraft, useLogbook, useWrite, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import { Notice } from "#ui/Notice.tsx";
import { readAs } from "../entry/readAs.ts";
import { editFrom, useLapDraft } from "../entry/useLapDraft.ts";
import styles from "../laps/LapEditor.module.css";
import { type ReadEdit, readEdit, type TypedEdit } from "../laps/typedEdit.ts";
import type { SessionFigures } from "../session/sessionFigures.ts";

interface LostEditProps {
  readonly found: FoundDraft;
  /** "lap 4" */
  readonly was: string;
  /** The run in which the lap lies deleted; undefined where it is not in this session any more. */
  readonly grave: Run | undefined;
  /** The run it would be stored in as a new lap. */
  readonly home: Run | undefined;
  /** The runs on the page, by the numbers they go by there. */
  readonly shown: SessionFigures["shown"];
  readonly context: EntryContext;
  /** Its editor was open until now, so the driver goes on typing here. */
  readonly isFocused: boolean;
  /** The lap is there again: its editor is to be opened. */
  readonly onBack: () => void;
  readonly onSettled: () => void;
}

/** The text of an edit whose lap is gone: it can become a new lap, or the lap can be brought back for it. */
export function LostEdit(props: LostEditProps) {
  const { found, was, grave, home, shown, context, isFocused, onBack, onSettled } = props;
  const { book } = useLogbook();
  const write = useWrite();
  const { sessionId = "", runId = "", number = 0, text: kept } = editFrom(found.state);
  const draft = useLapDraft(found.of, { sessionId, runId, number }, kept);
  const [asked, setAsked] = useState<string>();
  // Made once, so that pressing twice makes no second lap.
  const [newId] = useState(() => book.newId());
  const { text } = draft;
  const reading = readEdit(text, { ...context, isPractice: false });
  const { box, field, submit } = useWriteForm<TypedEdit, ReadEdit, Change, HTMLDivElement>({
    typed: { value: { text }, set: (typed) => draft.set(typed?.text) },
    reading,
    isAgreed: (read) => {
      if (read.asks.length === 0 || asked === text) return true;
      setAsked(text);
      return false;
    },
    write: (to, read) =>
      addLap(to, {
        runId: home?.id ?? "",
        id: newId,
        lap: { ...read.lap, source: sourceOf(read) },
      }),
    isUndoOffered: true,
    onStored: onSettled,
  });
  const start = useRef(isFocused);
  useEffect(() => {
    if (start.current) box.current?.querySelector("input")?.focus();
  }, [box]);
  const letGo = () => {
    draft.set(undefined);
    onSettled();
  };
  const bringBack = async () => {
    if (grave === undefined) return;
    const back = { runId: grave.id, lapId: found.of };
    const isBack = await write((to) => bringBackLap(to, back), { isUndoOffered: true });
    // An editor that was open comes back with its lap, and may have been closed again by now.
    if (isBack && !isFocused) onBack();
  };
  const homeNumber = shown.find(({ run }) => run.id === home?.id)?.number;
  const isAsking = reading.ok && asked === text;
  return (
    <div ref={box}>
      <Notice
        tone="caution"
        actions={
          <>
            {grave !== undefined && (
              <Button size="between" onClick={() => void bringBack()}>
                Bring the lap back
              </Button>
            )}
            {home !== undefined && (
              <Button size="between" onClick={submit}>
                Store it as a new lap{homeNumber === undefined ? "" : ` of run ${homeNumber}`}
              </Button>
            )}
            {navigator.clipboard !== undefined && (
              <Button size="between" onClick={() => void navigator.clipboard.writeText(text)}>
                Copy
              </Button>
            )}
            <Button size="between" onClick={letGo}>
              Let it go
            </Button>
          </>
        }
      >
        <p role="alert">
          <strong>
            {was[0]?.toUpperCase()}
            {was.slice(1)} {grave === undefined ? "is no longer in this session" : "was deleted"}
          </strong>
          , perhaps in another tab, while it was being changed here. What you typed is kept:
        </p>
        <div className={styles["editor"]}>
          <Field
            label={`What you typed for ${was}`}
            {...field("text")}
            size="between"
            autoCapitalize="off"
            spellCheck={false}
            hint={
              isAsking
                ? `${factsOf(reading.value)} Store it again if it is right.`
                : reading.ok && readAs(reading.value.lap)
            }
          />
        </div>
      </Notice>
    </div>
  );
}
