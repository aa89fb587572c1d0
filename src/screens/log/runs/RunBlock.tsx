import { Suspense, useMemo, useState } from "react";
import { LapStrip, type LapStripProps } from "#charts/strip/LapStrip.tsx";
import { type Id, lapsInOrder, type Run, sayDate } from "#domain";
import { useAddress } from "#state/address.ts";
import { firstOf, useComparing } from "#state/comparing.ts";
import { type LapDifferences, runTimes } from "#stats";
import { Button } from "#ui/Button.tsx";
import { CompareButton } from "#ui/Compare.tsx";
import { laterPart } from "#ui/laterPart.ts";
import { Name } from "#ui/Name.tsx";
import { counted, sayRun } from "#words";
import { LapTable } from "../laps/LapTable.tsx";
import { RunBars, useRunStrip } from "../session/RunStrips.tsx";
import type { SessionFigures } from "../session/sessionFigures.ts";
import type { SessionData } from "../session/useSession.ts";
import { NextRunSettings } from "./NextRunSettings.tsx";
import styles from "./RunBlock.module.css";
import { runInShort } from "./runInShort.ts";
import { runInWords } from "./runWords.ts";

const LapEditor = laterPart(() => import("../laps/LapEditor.tsx").then((file) => file.LapEditor));
const SummaryDialog = laterPart(() => import("./SummaryDialog.tsx").then((file) => file.SummaryDialog));
const RunDialog = laterPart(() => import("./RunDialog.tsx").then((file) => file.RunDialog));

/** So many laps of a run are drawn at first, and so many more at a press. */
const fewest = 200;
const more = 500;

interface RunBlockProps {
  readonly data: SessionData;
  readonly run: Run;
  readonly number: number;
  /** The runs on the page, by the numbers they go by there. */
  readonly shown: SessionFigures["shown"];
  readonly rows: readonly LapDifferences[];
  /** The lap that holds the PB, of whatever run. */
  readonly standingId: Id | undefined;
  readonly contextOf: SessionFigures["contextOf"];
  /** The lap being edited, of any run, and the way to choose another or none. */
  readonly edited: Id | undefined;
  readonly onEdit: (lapId: Id | undefined) => void;
  /** What the run says; asked for only where it is read, and absent where it stands beside the ledger already. */
  readonly saidOf: SessionFigures["saidOf"] | undefined;
  /** Its sentence stands under its head even while its laps are folded away. */
  readonly isSaid: boolean;
  /** The run being driven stands open; the others can be unfolded. */
  readonly isCurrent: boolean;
  /** The run before the one being driven: its strip stays whole while its laps are folded away. */
  readonly isBefore: boolean;
  /** A run of a rig test that lasts: nothing is told of how fast it was. */
  readonly isSilent: boolean;
}

/** One run as a ruled block: what kind of run, its laps, and the way to put it right. */
export function RunBlock({
  data,
  run,
  number,
  shown,
  rows,
  standingId,
  contextOf,
  edited,
  onEdit,
  saidOf,
  isSaid,
  isCurrent,
  isBefore,
  isSilent,
}: RunBlockProps) {
  const address = useAddress();
  const namedId = address.place === "log" ? address.lapId : undefined;
  const named = namedId === undefined ? -1 : rows.findIndex(({ lap }) => lap.id === namedId);
  const [isUnfolded, setUnfolded] = useState<boolean>();
  const [dialog, setDialog] = useState<"settings" | "summary">();
  const editedAt = rows.findIndex(({ lap }) => lap.id === edited);
  const editedRow = rows[editedAt];
  const isShown =
    isCurrent ||
    editedRow !== undefined ||
    (isUnfolded ?? (named >= 0 || data.session.endedAt !== undefined));
  const hasSentence = !isCurrent && !isSilent && (isShown || isSaid);
  const said = useMemo(() => (hasSentence ? saidOf?.(number) : undefined), [hasSentence, saidOf, number]);
  const times = useMemo(() => runTimes(run, data.preferences), [run, data.preferences]);
  const [drawn, setDrawn] = useState(fewest);
  const comparing = useComparing();
  const compared = {
    kind: "run",
    id: run.id,
    name: `run ${number} of ${sayDate(data.session.date)}`,
  } as const;
  const chosen = firstOf(comparing.first, compared);
  // A pasted run may have thousands of laps; the named lap of an address is among those drawn from then on, and the edited.
  const sought = [named, editedAt].filter((at) => at >= 0);
  const first = Math.max(0, Math.min(rows.length - drawn, ...sought));
  const hasStrip = rows.length > 0;
  const isStripWhole = isShown || isBefore;
  return (
    <section className={styles["run"]} data-current={isCurrent} aria-label={`Run ${number}`}>
      <div className={styles["head"]}>
        <h2 className={styles["title"]}>
          Run {number}
          <span className={styles["kind"]}> · {runInWords(run)}</span>
        </h2>
        <span className={styles["sum"]}>
          {isSilent ? counted(lapsInOrder(run).length, "lap") : runInShort(run, times)}
        </span>
        {hasStrip && !isStripWhole && <StripOfRun runId={run.id} size="small" name={`Run ${number}`} />}
        <span className={styles["buttons"]}>
          {!isCurrent && rows.length > 0 && (
            <Button variant="quiet" aria-expanded={isShown} onClick={() => setUnfolded(!isShown)}>
              {isShown ? "Hide laps" : "Show laps"}
            </Button>
          )}
          {rows.length > 0 && !isSilent && (!isCurrent || chosen !== undefined) && (
            <CompareButton name={compared.name} first={chosen} onChoose={() => comparing.choose(compared)} />
          )}
          {run.summary && (
            <Button
              variant="quiet"
              aria-label={`Edit the figures of run ${number}`}
              onClick={() => setDialog("summary")}
            >
              Edit
            </Button>
          )}
          <Button variant="quiet" aria-label={`Change run ${number}`} onClick={() => setDialog("settings")}>
            Change
          </Button>
        </span>
      </div>
      {run.note !== "" && (
        <p className={styles["note"]}>
          <Name>{run.note}</Name>
        </p>
      )}
      {said && <p className={styles["note"]}>{sayRun(said.report, said.isBeaten)}</p>}
      {isCurrent && rows.length === 0 && (
        <NextRunSettings run={run} before={shown.findLast((one) => one.number < number)} />
      )}
      {hasStrip && isStripWhole && (
        <div className={styles["strip"]}>
          <StripOfRun runId={run.id} size="full" name={`Run ${number}`} onOpen={onEdit} />
        </div>
      )}
      {isShown && first > 0 && (
        <Button variant="quiet" onClick={() => setDrawn(rows.length - first + more)}>
          Show {Math.min(more, first)} of {first.toLocaleString("en")} earlier laps
        </Button>
      )}
      {isShown && rows.length > 0 && (
        <RunBars runId={run.id}>
          <LapTable
            caption={`Laps of run ${number}`}
            rows={rows.slice(first)}
            edited={edited}
            onEdit={onEdit}
            standingId={standingId}
            hasBars={times.usual.known && run.rigTest === undefined}
            displayDecimals={data.preferences.displayDecimals}
            editor={
              editedRow && (
                <Suspense fallback={null}>
                  <LapEditor
                    lap={editedRow.lap}
                    number={editedRow.number}
                    run={run}
                    shown={shown}
                    context={contextOf(run, editedRow.lap.id)}
                    onDone={() => onEdit(undefined)}
                  />
                </Suspense>
              )
            }
          />
        </RunBars>
      )}
      <Suspense fallback={null}>
        {dialog === "settings" && (
          <RunDialog
            data={data}
            run={run}
            number={number}
            shown={shown}
            onClose={() => setDialog(undefined)}
          />
        )}
        {dialog === "summary" && (
          <SummaryDialog
            data={data}
            run={run}
            context={contextOf(run)}
            onClose={() => setDialog(undefined)}
          />
        )}
      </Suspense>
    </section>
  );
}

interface StripOfRunProps extends Pick<LapStripProps, "size" | "name" | "onOpen"> {
  readonly runId: Id;
}

function StripOfRun({ runId, ...shown }: StripOfRunProps) {
  const strip = useRunStrip(runId);
  if (strip === undefined) return null;
  return <LapStrip laps={strip.laps} lines={strip.lines} scale={strip.scale} {...shown} />;
}
