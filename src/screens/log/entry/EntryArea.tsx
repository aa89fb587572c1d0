import { type ReactNode, type RefCallback, Suspense, useCallback } from "react";
import { type Id, lapsInOrder, type Run, standsApart } from "#domain";
import type { EntryContext } from "#entry";
import { laterPart } from "#ui/laterPart.ts";
import { useHeight } from "#ui/useHeight.ts";
import { useHeadsTop } from "../laps/useHeadsTop.ts";
import { useLastLapInSight } from "../laps/useLastLapInSight.ts";
import { ForgottenEnd } from "../runs/ForgottenEnd.tsx";
import type { SessionFigures } from "../session/sessionFigures.ts";
import { useStoredWords } from "../typed/useStoredWords.ts";
import styles from "./EntryArea.module.css";
import { EntryPanel } from "./EntryPanel.tsx";
import { pastePlaces } from "./pastePlaces.ts";
import { useEntry } from "./useEntry.ts";
import type { PadState } from "./usePad.ts";

const StrayLine = laterPart(() => import("../typed/StrayLine.tsx").then((file) => file.StrayLine));
const Pasted = laterPart(() => import("./Pasted.tsx").then((file) => file.Pasted));

interface EntryAreaProps {
  readonly sessionId: Id;
  /** The run being driven. */
  readonly run: Run;
  /** It was ended here a moment ago: what is typed now is for the next one. */
  readonly isLeft: boolean;
  readonly context: EntryContext;
  readonly pad: PadState;
  readonly rows: SessionFigures["rows"];
  /** The runs on the page, by the numbers they go by there. */
  readonly shown: SessionFigures["shown"];
  /** What the run says so far, read on a phone beside the field; on a desk it stands at the right. */
  readonly finding: string | undefined;
  /** A lap is being edited and has the keyboard; on a phone the pad would cover it. */
  readonly isCovered: boolean;
  readonly onEditLast: (lapId: Id) => void;
  /** Stands right above the line: the rig test, the plan. */
  readonly above?: ReactNode;
}

/** Where laps are typed. It holds what is typed, so that a key press draws this and not the whole ledger. */
export function EntryArea(props: EntryAreaProps) {
  const { sessionId, run, isLeft, context, pad, rows, shown, finding, isCovered, onEditLast, above } = props;
  const height = useHeight("--entry-height");
  const headsTop = useHeadsTop();
  const laps = lapsInOrder(run);
  const last = laps.at(-1);
  const lastInSight = useLastLapInSight(last?.id);
  const box = useCallback<RefCallback<HTMLElement>>(
    (element) => {
      const ends = [height(element), headsTop(element), lastInSight(element)];
      return () => {
        for (const end of ends) end?.();
      };
    },
    [height, headsTop, lastInSight],
  );
  const entry = useEntry(sessionId, run, context, isLeft);
  const said = useStoredWords(rows, entry.stored, finding);
  const lapNumber = laps.length + entry.onTheWay + 1;
  return (
    <div
      className={styles["entry"]}
      ref={box}
      data-covered={isCovered}
      data-pad={pad.isThere ? (pad.isOpen ? "open" : "folded") : undefined}
    >
      {finding !== undefined && (
        <p className={styles["finding"]} aria-hidden="true">
          {finding}
        </p>
      )}
      {above}
      <ForgottenEnd run={run} driven={entry.driven} usualMs={context.usualMs} />
      <EntryPanel
        entry={entry}
        context={context}
        pad={pad}
        isApart={standsApart(run) !== undefined}
        lapNumber={lapNumber}
        isCovered={isCovered}
        said={entry.pasted === undefined ? said : ""}
        onEditLast={last && (() => onEditLast(last.id))}
        question={
          entry.isStray &&
          entry.begunIn !== undefined && (
            <Suspense fallback={null}>
              <StrayLine
                text={entry.text}
                begunIn={entry.begunIn}
                current={run}
                sessionId={sessionId}
                shown={shown}
                onPlace={entry.placeIn}
              />
            </Suspense>
          )
        }
      />
      {entry.pasted !== undefined && (
        <Suspense fallback={null}>
          <Pasted
            text={entry.pasted}
            context={context}
            places={pastePlaces(shown, run, entry.pastedElsewhere)}
            onDiscard={() => entry.setPasted(undefined)}
            onAdded={entry.takePasted}
          />
        </Suspense>
      )}
    </div>
  );
}
