import { runOf } from "#db";
import type { Id, Run } from "#domain";
import { useRows } from "#live";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";
import type { SessionFigures } from "../session/sessionFigures.ts";
import styles from "./StrayLine.module.css";

interface StrayLineProps {
  readonly text: string;
  /** The run the line was begun in, which is over. */
  readonly begunIn: Id;
  /** The run being driven; else, in a session that has ended, its last. */
  readonly current: Run | undefined;
  readonly sessionId: Id;
  /** The runs on the page, by the numbers they go by there. */
  readonly shown: SessionFigures["shown"];
  readonly onPlace: (runId: Id, at: number) => void;
}

/** A line whose run ended while it was half typed: nothing is stored until the driver has said where it belongs. */
export function StrayLine({ text, begunIn, current, sessionId, shown, onPlace }: StrayLineProps) {
  const run = useRows(async (book) => (await runOf(book, begunIn)) ?? null, [begunIn]);
  if (run === undefined) return null;
  const numberOf = (id: Id | undefined) => shown.find((one) => one.run.id === id)?.number;
  const inWords = (id: Id, else_: string) => (numberOf(id) === undefined ? else_ : `run ${numberOf(id)}`);
  const isElsewhere = run !== null && run.sessionId !== sessionId;
  const begun = inWords(begunIn, "a run without laps");
  const places = [
    ...(run === null ? [] : [{ id: run.id, words: isElsewhere ? "that run" : inWords(run.id, "that run") }]),
    ...(current === undefined || current.id === begunIn
      ? []
      : [{ id: current.id, words: inWords(current.id, "the run being driven") }]),
  ];
  return (
    <div role="alert" data-question>
      <Notice
        tone="caution"
        actions={places.map(({ id, words }) => (
          <Button key={id} size="between" onClick={({ timeStamp }) => onPlace(id, timeStamp)}>
            Add it to {words}
          </Button>
        ))}
      >
        <p>
          <strong>Where does {text.trim()} belong?</strong>{" "}
          <span className={styles["why"]}>
            {run === null
              ? "The run it was begun in is no longer there."
              : isElsewhere
                ? "The run it was begun in has been moved to another session."
                : `It was begun in ${begun}, which has ended since.`}{" "}
            Nothing is stored until you choose.
          </span>
        </p>
      </Notice>
    </div>
  );
}
