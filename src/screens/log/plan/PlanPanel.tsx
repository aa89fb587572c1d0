import { Suspense, useState } from "react";
import { leaveOutLine } from "#db";
import type { Id, Run } from "#domain";
import { useWrite } from "#live";
import type { LineOutcome } from "#stats";
import { Button } from "#ui/Button.tsx";
import { laterPart } from "#ui/laterPart.ts";
import { Name } from "#ui/Name.tsx";
import {
  sayLapsSoFar,
  sayLineInShort,
  sayLineSoFar,
  sayNoneLeft,
  sayPlaceInPlan,
  sayRunTask,
  sayWent,
} from "#words";
import { useIsNarrow } from "../session/useIsNarrow.ts";
import { DrillCount } from "./DrillCount.tsx";
import styles from "./PlanPanel.module.css";
import type { PlanTonight } from "./planTonight.ts";

const PickLine = laterPart(() => import("./PickLine.tsx").then((file) => file.PickLine));

interface PlanPanelProps {
  readonly sessionId: Id;
  readonly plan: PlanTonight;
  /** The run being driven. */
  readonly run: Run | undefined;
  /** The pad stands open under it: one line is all there is room for. */
  readonly isSmall: boolean;
  /** No lap of a run to come is there yet. */
  readonly isBetween: boolean;
  /** What the line asks for stands above already, as what comes next. */
  readonly isTold: boolean;
  /** Ends the run and begins the next one, as at the foot of the ledger. */
  readonly onEndRun: () => void;
}

/** The plan above the entry line: which of its lines the run drives, how far that is met, and the ways round it. */
export function PlanPanel(props: PlanPanelProps) {
  const { plan, run, isSmall, isBetween, isTold } = props;
  const [isPicking, setPicking] = useState(false);
  const outcome = plan.outcomes.find(({ line }) => line === plan.line);
  const went = isBetween && plan.before !== undefined ? sayWent(plan.before) : "";
  return (
    <section
      aria-label="Plan"
      className={styles["panel"]}
      data-small={isSmall ? (isBetween ? "next" : "run") : undefined}
      data-told={isTold || undefined}
      data-drill={outcome?.line.drill !== undefined || undefined}
    >
      {went !== "" && (
        <p className={styles["went"]}>
          <Name>{went}</Name>
        </p>
      )}
      {outcome === undefined ? <NoLine plan={plan} /> : <OfLine {...props} outcome={outcome} />}
      {run !== undefined && <Ways {...props} run={run} outcome={outcome} onPick={() => setPicking(true)} />}
      {isPicking && run !== undefined && (
        <Suspense fallback={null}>
          <PickLine plan={plan} run={run} isBetween={isBetween} onClose={() => setPicking(false)} />
        </Suspense>
      )}
    </section>
  );
}

function NoLine({ plan: { toCome, outcomes } }: Pick<PlanPanelProps, "plan">) {
  return (
    <p className={styles["none"]}>
      {toCome === undefined ? sayNoneLeft(outcomes) : "Plan: this run drives no line of it."}
    </p>
  );
}

interface OfLineProps extends PlanPanelProps {
  readonly outcome: LineOutcome;
}

/** What the run is for; while it is driven, how far it is met. */
function OfLine({ plan, outcome, isBetween, isSmall }: OfLineProps) {
  const { line, laps } = outcome;
  const place = sayPlaceInPlan(line, plan.lines);
  const isDrill = line.drill !== undefined;
  const soFar = laps === 0 && !isDrill ? undefined : sayLineSoFar(outcome);
  // The count of a drill stands under it.
  const inShort = isDrill ? sayLapsSoFar(outcome) : (soFar ?? sayRunTask(line));
  if (isSmall && !isBetween)
    return (
      <p className={styles["small"]}>
        <span className={styles["purpose"]}>
          {place} <Name>{line.purpose}</Name>
        </span>
        <span className={styles["progress"]}>: {inShort}</span>
      </p>
    );
  const about = [line.attendTo, line.goodWhen && `good when ${line.goodWhen}`].filter(Boolean).join(" · ");
  return (
    <div className={styles["said"]}>
      <p className={styles["words"]}>
        <Name>{`Plan ${place}: ${sayLineInShort(line)}`}</Name>
      </p>
      {about !== "" && (
        <p className={styles["second"]}>
          <Name>{about}</Name>
        </p>
      )}
      {soFar !== undefined && (
        <p className={styles["soFar"]}>
          <Name>{soFar}</Name>
        </p>
      )}
    </div>
  );
}

interface WaysProps extends PlanPanelProps {
  readonly run: Run;
  readonly outcome: LineOutcome | undefined;
  readonly onPick: () => void;
}

/** The keys of a drill, and what can be done with the line. */
function Ways({ sessionId, run, outcome, isSmall, isBetween, isTold, onEndRun, onPick }: WaysProps) {
  const write = useWrite();
  const { line, laps = 0 } = outcome ?? {};
  const counted = run.counts?.find(({ drill, corner }) => drill === line?.drill && corner === line?.corner);
  const lineId = line?.id;
  const isNarrow = useIsNarrow();
  const isDrill = line?.drill !== undefined;
  // Beside the keys of a drill there is room on a phone for the way to all the rest alone.
  const isTight = (isSmall && !isBetween) || (isDrill && isNarrow && (isSmall || isTold));
  const isAll = laps > 0 && laps >= (line?.laps ?? Number.POSITIVE_INFINITY);
  return (
    <div className={styles["ways"]}>
      {line?.drill !== undefined && (
        <DrillCount
          runId={run.id}
          drill={line.drill}
          corner={line.corner}
          good={counted?.good ?? 0}
          tries={counted?.tries ?? 0}
          isTight={isTight}
        />
      )}
      <div className={styles["buttons"]}>
        {isAll && (
          <Button size="between" variant="primary" onClick={onEndRun}>
            End run
          </Button>
        )}
        {lineId !== undefined && isBetween && counted === undefined && !isTight && (
          <Button
            size="between"
            variant="quiet"
            onClick={() =>
              void write((book) => leaveOutLine(book, { sessionId, lineId }), { isUndoOffered: true })
            }
          >
            Leave out
          </Button>
        )}
        {!(isTight && isAll) && (
          <Button
            size="between"
            variant="quiet"
            aria-haspopup="dialog"
            aria-label="Another line of the plan"
            onClick={onPick}
          >
            {isTight ? "Line" : "Another line"}
          </Button>
        )}
      </div>
    </div>
  );
}
