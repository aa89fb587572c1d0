import type { Id } from "#domain";
import { type EntryContext, factsOf } from "#entry";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import styles from "../entry/EntryPanel.module.css";
import { Pasted } from "../entry/Pasted.tsx";
import { pastePlaces } from "../entry/pastePlaces.ts";
import { readAs } from "../entry/readAs.ts";
import { TypedOverLines } from "../entry/TypedOverLines.tsx";
import { useEntry } from "../entry/useEntry.ts";
import type { SessionFigures } from "../session/sessionFigures.ts";
import { StrayLine } from "./StrayLine.tsx";
import { UnstoredLines } from "./UnstoredLines.tsx";

interface StrandedEntryProps {
  readonly sessionId: Id;
  /** The runs on the page, by the numbers they go by there. */
  readonly shown: SessionFigures["shown"];
  readonly context: EntryContext;
}

/** What was half typed, or on its way, when its session ended: it stays on the page until it is placed or let go. */
export function StrandedEntry({ sessionId, shown, context }: StrandedEntryProps) {
  const entry = useEntry(sessionId, undefined, context);
  const { text, standing, reading, begunIn, kept } = entry;
  const isTyped = text.trim() !== "";
  const last = shown.findLast(({ run }) => run.summary === undefined);
  const isOffered = kept.left.some((left) => left.text !== "");
  const isWaiting = entry.typedOver.length > 0 || entry.unstored.length > 0 || entry.pasted !== undefined;
  if (!isTyped && !isOffered && !isWaiting) return null;
  return (
    <section className={styles["panel"]} aria-label="Half typed">
      <UnstoredLines entry={entry} />
      <HalfTyped of={kept} isFree={text === ""} onTakeUp={entry.takeUp} />
      <TypedOverLines entry={entry} />
      {isTyped && (
        <>
          <Field
            label="Half typed when the session ended"
            value={text}
            onChange={entry.setText}
            size="between"
            autoCapitalize="off"
            spellCheck={false}
            problem={standing.kind === "refused" && reading?.ok === false ? reading.problem : undefined}
            hint={reading?.ok ? readAs(reading.lap) : undefined}
          />
          {standing.kind === "asking" ? (
            <div>
              <p className={styles["ask"]} role="alert">
                {factsOf(standing) ?? "The same lap again?"}
              </p>
              <Button size="between" onClick={({ timeStamp }) => entry.submit(timeStamp)}>
                Add it as it is
              </Button>
            </div>
          ) : (
            <StrayLine
              text={text}
              begunIn={begunIn ?? last?.run.id ?? ""}
              current={last?.run}
              sessionId={sessionId}
              shown={shown}
              onPlace={entry.placeIn}
            />
          )}
          <div>
            <Button size="between" onClick={() => entry.setText("")}>
              Let it go
            </Button>
          </div>
        </>
      )}
      {entry.pasted !== undefined && last !== undefined && (
        <Pasted
          text={entry.pasted}
          context={context}
          places={pastePlaces(shown, last.run, entry.pastedElsewhere)}
          onDiscard={() => entry.setPasted(undefined)}
          onAdded={entry.takePasted}
        />
      )}
    </section>
  );
}
