import { lazy, Suspense } from "react";
import { type Id, lapsInOrder, type Run } from "#domain";
import type { EntryContext } from "#entry";
import { useHeight } from "#ui/useHeight.ts";
import styles from "./EntryArea.module.css";
import { EntryPanel } from "./EntryPanel.tsx";
import type { SessionFigures } from "./sessionFigures.ts";
import { useEntry } from "./useEntry.ts";
import { useStoredWords } from "./useStoredWords.ts";

const Pasted = lazy(() => import("./Pasted.tsx").then((file) => ({ default: file.Pasted })));

interface EntryAreaProps {
  readonly sessionId: Id;
  /** The run being driven. */
  readonly run: Run;
  readonly context: EntryContext;
  readonly rows: SessionFigures["rows"];
  /** A lap is being edited and has the keyboard; on a phone the pad would cover it. */
  readonly isCovered: boolean;
}

/** Where laps are typed. It holds what is typed, so that a key press draws this and not the whole ledger. */
export function EntryArea({ sessionId, run, context, rows, isCovered }: EntryAreaProps) {
  const box = useHeight("--entry-height");
  const entry = useEntry(sessionId, run, context);
  const said = useStoredWords(rows, entry.storedId);
  const lapNumber = lapsInOrder(run).length + entry.onTheWay + 1;
  return (
    <div className={styles["entry"]} ref={box} data-covered={isCovered}>
      <EntryPanel entry={entry} context={context} lapNumber={lapNumber} said={said} />
      {entry.pasted !== undefined && (
        <Suspense fallback={null}>
          <Pasted
            text={entry.pasted}
            context={context}
            run={run}
            onDiscard={() => entry.setPasted(undefined)}
          />
        </Suspense>
      )}
    </div>
  );
}
