import { lazy, Suspense, useMemo, useState } from "react";
import { addRun, reopenSession } from "#db";
import { comboName, formatLapTime, type Id, isMistake, lapsInOrder, type Run } from "#domain";
import { usePageBest, useToday, useWrite } from "#live";
import { goTo, printAddress } from "#state/address.ts";
import { accountTarget, lapDifferences, runReport, sessionReport } from "#stats";
import { Button } from "#ui/Button.tsx";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { sayRun, suggestNextRun } from "#words";
import { EntryPanel } from "./EntryPanel.tsx";
import { entryContext } from "./entryContext.ts";
import { IdleQuestion } from "./IdleQuestion.tsx";
import { timeId } from "./LapTable.tsx";
import { RunBlock } from "./RunBlock.tsx";
import { RunSays } from "./RunSays.tsx";
import { SessionHead } from "./SessionHead.tsx";
import styles from "./SessionPage.module.css";
import { SessionSum } from "./SessionSum.tsx";
import { useEntry } from "./useEntry.ts";
import { useFocusBack, useFocusHome } from "./useFocusHome.ts";
import { useHeight } from "./useHeight.ts";
import { type SessionData, useSession } from "./useSession.ts";
import { useWakeLock } from "./useWakeLock.ts";

const EndSession = lazy(() => import("./EndSession.tsx").then((file) => ({ default: file.EndSession })));
const Pasted = lazy(() => import("./Pasted.tsx").then((file) => ({ default: file.Pasted })));
const RestingView = lazy(() => import("./RestingView.tsx").then((file) => ({ default: file.RestingView })));
const SummaryDialog = lazy(() =>
  import("./SummaryDialog.tsx").then((file) => ({ default: file.SummaryDialog })),
);

/** The page of one session, open or ended. */
export function SessionPage({ sessionId }: { readonly sessionId: Id }) {
  const data = useSession(sessionId);
  if (data === undefined) return <p>Opening the session</p>;
  if (data === null)
    return (
      <>
        <h1>This session is not there</h1>
        <p>
          It may have been deleted, or belong to another logbook.{" "}
          <a href={printAddress({ place: "log" })}>Back to Log</a>
        </p>
      </>
    );
  return <Ledger data={data} />;
}

/** Sum of the lap times written, for the end of a session that is entered afterwards. */
const drivingMs = (runs: readonly Run[]) =>
  runs.reduce((sum, run) => sum + lapsInOrder(run).reduce((all, { ms = 0 }) => all + ms, 0), 0);

const targetNames = {
  session: "target of the day",
  target: "target",
  reference: "reference lap",
  pb: "PB",
} as const;

function Ledger({ data }: { readonly data: SessionData }) {
  const { session, runs, preferences, layout } = data;
  const isOpen = session.endedAt === undefined;
  const write = useWrite();
  const today = useToday(preferences);
  const [dialog, setDialog] = useState<"summary" | "end">();
  const [isResting, setResting] = useState(false);
  const [edited, setEdited] = useState<Id>();
  const isAwake = useWakeLock(isOpen);
  const entryBox = useHeight("--entry-height");
  const pageBox = useFocusHome();
  useFocusBack(edited && timeId(edited));

  const before = { from: data.pageFrom, to: session.startedAt };
  const pb = usePageBest(session.comboId, before, session.id, preferences) ?? undefined;
  const current = isOpen
    ? runs.findLast((run) => run.endedAt === undefined && run.summary === undefined)
    : undefined;
  const said = runs.findLast((run) => run.summary !== undefined || lapsInOrder(run).length > 0);

  const computed = useMemo(() => {
    const target = accountTarget(session, data.targets, data.references, pb?.ms);
    const named = target?.from === "pb" ? undefined : target;
    const report = sessionReport({ session, runs, preferences, target, pbBefore: pb });
    const rows = lapDifferences(runs, pb, named?.ms);
    return { target: named, report, rows };
  }, [session, runs, preferences, data.targets, data.references, pb]);
  const best = computed.report.newBests.at(-1) ?? pb;
  const context = useMemo(
    () =>
      entryContext({
        run: current ?? said,
        runs,
        layout,
        preferences,
        pb: best,
        targetMs: computed.target?.ms,
      }),
    [current, said, runs, layout, preferences, best, computed.target],
  );
  const entry = useEntry(session.id, current, context);
  const shownRuns = runs.filter(
    (run) => run === current || run.summary !== undefined || lapsInOrder(run).length > 0,
  );
  const numberOf = (id: Id) => shownRuns.findIndex((run) => run.id === id) + 1;
  const lapNumber = (current ? lapsInOrder(current).length : 0) + entry.onTheWay + 1;

  const runSays = useMemo(() => {
    if (said === undefined) return undefined;
    const earlier = runs.filter((run) => run.n < said.n);
    const bestBefore =
      computed.report.newBests.findLast(({ runId }) => earlier.some(({ id }) => id === runId)) ?? pb;
    const report = runReport({
      run: said,
      runsBefore: earlier,
      pb: bestBefore,
      targetMs: computed.target?.ms,
      preferences,
    });
    const corners = lapsInOrder(said)
      .filter(isMistake)
      .flatMap(({ remarks }) => remarks.flatMap(({ corner }) => (corner === undefined ? [] : [corner])));
    return { report, corners };
  }, [said, runs, pb, computed, preferences]);

  // Between two runs the finding stands first; while laps are typed, the laps do.
  const isBetween = current === undefined || lapsInOrder(current).length === 0;
  const lastRow = current && computed.rows.get(current.id)?.at(-1);
  const announced =
    entry.stored === 0 || lastRow === undefined
      ? ""
      : `Lap ${lastRow.number} stored, ${lastRow.lap.ms === undefined ? "no time" : formatLapTime(lastRow.lap.ms, lastRow.lap.decimals)}${lastRow.isBest ? ", a new PB" : ""}`;

  const nextRun = () => write((book) => addRun(book, { sessionId: session.id }));
  const name = comboName(data);
  return (
    <div ref={pageBox} className={styles["page"]} data-open={isOpen} data-between={isBetween}>
      <div className={styles["top"]}>
        <SessionHead
          data={data}
          targetMs={computed.target?.ms}
          targetFrom={computed.target && targetNames[computed.target.from]}
          onRest={() => setResting(true)}
        />
        <IdleQuestion session={session} runs={runs} />
        {runSays && !isBetween && (
          <p className={styles["sentence"]} aria-hidden="true">
            {sayRun(runSays.report)}
          </p>
        )}
        {entry.pasted !== undefined && current && (
          <Pasted
            text={entry.pasted}
            context={context}
            run={current}
            onDiscard={() => entry.setPasted(undefined)}
          />
        )}
      </div>
      {current && (
        <div className={styles["entry"]} ref={entryBox} data-covered={edited !== undefined}>
          <FaultBoundary what="The entry line">
            <EntryPanel entry={entry} context={context} lapNumber={lapNumber} said={announced} />
          </FaultBoundary>
        </div>
      )}
      <div className={styles["runs"]}>
        {[...shownRuns].reverse().map((run) => (
          <FaultBoundary key={run.id} what={`Run ${numberOf(run.id)}`}>
            <RunBlock
              data={data}
              run={run}
              number={numberOf(run.id)}
              rows={computed.rows.get(run.id) ?? []}
              context={context}
              edited={edited}
              onEdit={setEdited}
              isCurrent={run === current}
            />
          </FaultBoundary>
        ))}
        <div className={styles["buttons"]}>
          {isOpen && current && lapsInOrder(current).length > 0 && (
            <Button size="between" onClick={() => void nextRun()}>
              End run
            </Button>
          )}
          {isOpen && current === undefined && (
            <Button size="between" variant="primary" onClick={() => void nextRun()}>
              Begin a run
            </Button>
          )}
          <Button size="between" onClick={() => setDialog("summary")}>
            Summary run
          </Button>
          {isOpen ? (
            <Button size="between" onClick={() => setDialog("end")}>
              End session
            </Button>
          ) : (
            <>
              <Button
                size="between"
                onClick={() => void write((book) => reopenSession(book, { sessionId: session.id }))}
              >
                Go on with this session
              </Button>
              <Button size="between" onClick={() => goTo({ place: "log" })}>
                Back to Log
              </Button>
            </>
          )}
        </div>
      </div>
      <div className={styles["says"]}>
        <FaultBoundary what="What this run says">
          {runSays && said && (
            <RunSays
              report={runSays.report}
              session={computed.report}
              number={numberOf(said.id)}
              cornersOfMistakes={runSays.corners}
            />
          )}
        </FaultBoundary>
        <FaultBoundary what="The time account">
          <SessionSum report={computed.report} asOf={today} name={name} />
        </FaultBoundary>
      </div>
      <Suspense fallback={null}>
        {dialog === "summary" && (
          <SummaryDialog
            data={data}
            emptyRun={current && lapsInOrder(current).length === 0 ? current : undefined}
            usualMs={context.usualMs}
            onClose={() => setDialog(undefined)}
          />
        )}
        {dialog === "end" && (
          <EndSession data={data} drivingMs={drivingMs(runs)} onClose={() => setDialog(undefined)} />
        )}
        {isResting && (
          <RestingView
            finding={runSays ? sayRun(runSays.report) : "No laps yet."}
            next={
              runSays
                ? suggestNextRun(runSays.report, {
                    session: computed.report,
                    cornersOfMistakes: runSays.corners,
                  }).suggestion
                : "Type the first laps after your run."
            }
            usual={runSays?.report.usual.known ? formatLapTime(runSays.report.usual.value) : undefined}
            isAwake={isAwake}
            onBack={() => setResting(false)}
          />
        )}
      </Suspense>
    </div>
  );
}
