import { memo, Suspense, useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import { addRun, leaveOutLine, type RunsToJudgeBy, runsToJudgeBy } from "#db";
import { comboName, type Id, lapsInOrder, type Run } from "#domain";
import { usePageBest, useRows, useToday, useWrite } from "#live";
import { useComparing } from "#state/comparing.ts";
import type { KnownBest } from "#stats";
import { CompareBar } from "#ui/Compare.tsx";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { laterPart } from "#ui/laterPart.ts";
import { useFocusBack } from "#ui/useFocusBack.ts";
import {
  lookAtTest,
  nextOfLine,
  putItOn,
  sayRun,
  sayTestRunToCome,
  suggestNextRun,
  type WhatNext,
} from "#words";
import { EntryArea } from "../entry/EntryArea.tsx";
import { fieldId } from "../entry/EntryPanel.tsx";
import { useFocusHome } from "../entry/useFocusHome.ts";
import { usePad } from "../entry/usePad.ts";
import { bringIntoSight, timeId } from "../laps/LapRow.tsx";
import { useNamedLap } from "../laps/useNamedLap.ts";
import { NextTime } from "../plan/NextTime.tsx";
import { PlanAndOutcome } from "../plan/PlanAndOutcome.tsx";
import { PlanPanel } from "../plan/PlanPanel.tsx";
import { isTestFirst, planTonight } from "../plan/planTonight.ts";
import { WaitingPlan } from "../plan/WaitingPlan.tsx";
import { type TestTonight, useTestTonight } from "../rigTest/useTestTonight.ts";
import { RunBlock } from "../runs/RunBlock.tsx";
import { RunGap } from "../runs/RunGap.tsx";
import { RunSays } from "../runs/RunSays.tsx";
import { LastNote } from "../start/LastNote.tsx";
import { NoSession } from "../start/NoSession.tsx";
import { VerdictArea } from "../verdict/VerdictArea.tsx";
import { DateQuestion } from "./DateQuestion.tsx";
import { IdleQuestion } from "./IdleQuestion.tsx";
import { RunStrips } from "./RunStrips.tsx";
import { SessionAbout } from "./SessionAbout.tsx";
import { SessionButtons } from "./SessionButtons.tsx";
import { SessionChanged } from "./SessionChanged.tsx";
import { SessionHead } from "./SessionHead.tsx";
import styles from "./SessionPage.module.css";
import { SessionSum } from "./SessionSum.tsx";
import { SessionTotals } from "./SessionTotals.tsx";
import { sessionFigures } from "./sessionFigures.ts";
import { type SessionData, useSession } from "./useSession.ts";
import { useWakeLock } from "./useWakeLock.ts";

const EditsLeft = laterPart(() => import("../typed/EditsLeft.tsx").then((file) => file.EditsLeft));
const StrandedEntry = laterPart(() =>
  import("../typed/StrandedEntry.tsx").then((file) => file.StrandedEntry),
);
const RigTestPutOff = laterPart(() =>
  import("../rigTest/RigTestPutOff.tsx").then((file) => file.RigTestPutOff),
);
const RigTestPanel = laterPart(() => import("../rigTest/RigTestPanel.tsx").then((file) => file.RigTestPanel));
const EndSession = laterPart(() => import("./EndSession.tsx").then((file) => file.EndSession));
const SummaryDialog = laterPart(() => import("../runs/SummaryDialog.tsx").then((file) => file.SummaryDialog));

/** The page of one session, open or ended. */
export function SessionPage({ sessionId }: { readonly sessionId: Id }) {
  const data = useSession(sessionId);
  if (data === undefined) return <p>Opening the session</p>;
  if (data === null) return <NoSession sessionId={sessionId} />;
  return <WithBest data={data} />;
}

/** Sum of the lap times written, for the end of a session that is entered afterwards. */
const drivingMs = (runs: readonly Run[]) =>
  runs.reduce((sum, run) => sum + lapsInOrder(run).reduce((all, { ms = 0 }) => all + ms, 0), 0);

const targetNames = {
  session: "target of the day",
  target: "target",
  best: "best-lap target",
  median: "usual-lap target",
  reference: "reference lap",
  pb: "PB",
} as const;

/** Waits for the best of the page, so that no lap is taken for a PB that is none, and for what laps are judged by. */
function WithBest({ data }: { readonly data: SessionData }) {
  const { session, preferences, page } = data;
  const { comboId, startedAt } = session;
  const pb = usePageBest(comboId, { from: page.from, to: startedAt }, session.id, preferences);
  const later = usePageBest(comboId, { from: startedAt, to: page.to }, session.id, preferences, true);
  const around = useRows(
    (book) => runsToJudgeBy(book, session, page),
    [session.id, session.comboId, session.startedAt, session.endedAt, page.from, page.to],
  );
  if (pb === undefined || around === undefined) return <p>Opening the session</p>;
  return <Ledger data={data} pb={pb ?? undefined} later={later ?? undefined} around={around} />;
}

interface LedgerProps {
  readonly data: SessionData;
  readonly pb: KnownBest | undefined;
  /** Best of the page since this session: it may have beaten what this one brought. */
  readonly later: KnownBest | undefined;
  readonly around: RunsToJudgeBy;
}

/** While a rig test waits, its next run is what comes next; once all are driven, what it found. */
function nextOfTest({ progress, sides }: TestTonight): WhatNext {
  return progress.next === undefined
    ? { suggestion: lookAtTest, reason: "" }
    : { suggestion: sayTestRunToCome(progress, sides), reason: putItOn };
}

const byId = (id: string) => document.getElementById(id);

/** Drawn anew only when a row it rests on has changed. */
const Ledger = memo(function Ledger({ data, pb, later, around }: LedgerProps) {
  const { session, runs, preferences } = data;
  const isOpen = session.endedAt === undefined;
  const write = useWrite();
  const today = useToday(preferences);
  const [dialog, setDialog] = useState<"summary" | "end">();
  const [isBig, setBig] = useState(false);
  const [edited, setEdited] = useState<Id>();
  // A run ended here: what is typed from now on is for the next one, even before that is there.
  const [leaving, setLeaving] = useState<Id>();
  const [isFromField, setFromField] = useState(false);
  const edit = useCallback((lapId: Id | undefined, from?: "field") => {
    setEdited(lapId);
    if (lapId !== undefined) setFromField(from === "field");
  }, []);
  const comparing = useComparing();
  const isAwake = useWakeLock(isOpen);
  const pageBox = useFocusHome();
  useFocusBack(edited && (isFromField ? fieldId : timeId(edited)), byId);

  const figures = useMemo(() => sessionFigures(data, pb, later, around), [data, pb, later, around]);
  const { current, said, target, context, report, rows, shown, blocks } = figures;
  const strips = useMemo(
    () => ({
      shown,
      preferences,
      pb: report.newBests.at(-1) ?? pb,
      standingId: figures.standingId,
      targetMs: target?.ms,
    }),
    [shown, preferences, report, pb, figures.standingId, target],
  );
  const atOpening = useRef(current && lapsInOrder(current).at(-1)?.id);
  useEffect(() => {
    if (atOpening.current !== undefined) bringIntoSight(atOpening.current);
  }, []);
  useNamedLap();
  const wasOpen = useRef(isOpen);
  useLayoutEffect(() => {
    // What an ended session brought stands at its top.
    if (wasOpen.current && !isOpen) window.scrollTo(0, 0);
    wasOpen.current = isOpen;
  }, [isOpen]);
  if (leaving !== undefined && leaving !== current?.id) setLeaving(undefined);
  const beforeCurrent = shown.findLast(({ run }) => run !== current)?.number;
  const suggested =
    said &&
    suggestNextRun(said.report, {
      session: report,
      cornersOfMistakes: said.corners,
      corners: data.layout.corners,
    });

  const last = shown.findLast(({ run }) => run !== current);
  // Between two runs the finding stands first; while laps are typed, the laps do.
  const isBetween = current === undefined || lapsInOrder(current).length === 0;
  const { tonight, isPutOff, isSilent, putOff, takeUp } = useTestTonight(data, current, isBetween);
  const isSaidSilent = said !== undefined && isSilent(said.run);
  const plan = useMemo(
    () => planTonight(session, runs, current, preferences),
    [session, runs, current, preferences],
  );
  const planned = isBetween ? plan?.line : plan?.toCome;
  const isTestNext = tonight !== undefined && isTestFirst(plan, planned, tonight.test.id);
  // The next run of a rig test, the plan's line, and else what the last run suggests.
  const next: WhatNext | undefined =
    isTestNext && said ? nextOfTest(tonight) : planned ? nextOfLine(planned) : suggested;
  const pad = usePad(current?.id, isBetween && said !== undefined);

  const nextRun = async () => {
    setLeaving(current?.id);
    if (await write((book) => addRun(book, { sessionId: session.id }))) window.scrollTo(0, 0);
    else setLeaving(undefined);
  };
  const name = comboName(data);
  const buttons = (
    <SessionButtons
      session={session}
      current={current}
      last={isOpen || runs.at(-1)?.id === last?.run.id ? last : undefined}
      onNextRun={() => void nextRun()}
      onAsk={setDialog}
    />
  );
  const isDriving = tonight?.run !== undefined;
  const isTestShown = tonight
    ? isDriving || (isBetween ? isTestNext : plan?.line === undefined)
    : isPutOff && isBetween;
  const isPlanShown =
    plan !== undefined && !(tonight && isTestShown) && (isBetween || plan.line !== undefined);
  const mayTakePlan = isOpen && isBetween && plan === undefined;
  const above = (isTestShown || isPlanShown || mayTakePlan) && (
    <>
      {isTestShown && (
        <FaultBoundary what="The rig test">
          <Suspense fallback={null}>
            {tonight === undefined ? (
              <RigTestPutOff onTakeUp={takeUp} />
            ) : (
              <RigTestPanel
                sessionId={session.id}
                tonight={tonight}
                isSmall={pad.isOpen}
                isBetween={isBetween}
                onEndRun={() => void nextRun()}
                onPutOff={() => {
                  putOff();
                  const lineId = plan?.line?.rigTest === undefined ? undefined : plan.line.id;
                  if (lineId !== undefined)
                    void write((book) => leaveOutLine(book, { sessionId: session.id, lineId }));
                }}
              />
            )}
          </Suspense>
        </FaultBoundary>
      )}
      {isPlanShown && (
        <FaultBoundary what="The plan">
          <PlanPanel
            sessionId={session.id}
            plan={plan}
            run={current}
            isSmall={pad.isOpen}
            isBetween={isBetween}
            isTold={isBetween && said !== undefined}
            onEndRun={() => void nextRun()}
          />
        </FaultBoundary>
      )}
      {mayTakePlan && (
        <FaultBoundary what="The plan that waits">
          <WaitingPlan session={session} isBeginning={said === undefined} />
        </FaultBoundary>
      )}
    </>
  );
  const account = (
    <FaultBoundary what="The time account">
      <SessionSum report={report} asOf={today} name={name} />
    </FaultBoundary>
  );
  const says = (
    <div className={styles["says"]}>
      {!isOpen && account}
      {!isOpen && (
        <FaultBoundary what="What changed">
          <SessionChanged session={session} runs={shown} />
        </FaultBoundary>
      )}
      <FaultBoundary what="What this run says">
        {said && next && (
          <RunSays
            said={said}
            next={isOpen && !isBetween ? next : undefined}
            isTold={isOpen && isBetween}
            isSilent={isSaidSilent}
          />
        )}
      </FaultBoundary>
      {isOpen && account}
    </div>
  );
  return (
    <RunStrips of={strips}>
      <div
        ref={pageBox}
        className={styles["page"]}
        data-open={isOpen}
        data-between={isBetween}
        data-pad={pad.isThere ? (pad.isOpen ? "open" : "folded") : undefined}
      >
        <div className={styles["top"]}>
          <SessionHead data={data} onBigView={() => setBig(true)} />
          <SessionAbout
            session={session}
            targetMs={target?.ms}
            targetFrom={target && targetNames[target.kind ?? target.from]}
          />
          <div className={styles["asked"]}>
            <DateQuestion data={data} />
            <IdleQuestion session={session} runs={runs} />
            {isOpen && said === undefined && <LastNote session={session} />}
          </div>
        </div>
        {!isOpen && (
          <div className={styles["sum"]}>
            <FaultBoundary what="What the session says">
              <SessionTotals report={report} strips={strips} pb={pb} onOpenLap={edit} />
            </FaultBoundary>
            {buttons}
            {/* Under the buttons: it has to be worked out, and they must not move as it comes. */}
            {report.counts.driven > 0 && (
              <FaultBoundary what="Next time">
                <NextTime data={data} />
              </FaultBoundary>
            )}
            {session.plan !== undefined && session.plan.length > 0 && (
              <FaultBoundary what="Plan and outcome">
                <PlanAndOutcome data={data} />
              </FaultBoundary>
            )}
          </div>
        )}
        {isOpen && (
          <FaultBoundary what="The verdict">
            <VerdictArea
              data={data}
              figures={figures}
              next={next}
              isBetween={isBetween}
              isSilent={isSaidSilent}
              big={isBig ? { isAwake, onBack: () => setBig(false) } : undefined}
              onOpenLap={edit}
            />
          </FaultBoundary>
        )}
        {isOpen && current === undefined && above && <div className={styles["waiting"]}>{above}</div>}
        {current && (
          <FaultBoundary what="The entry line">
            <EntryArea
              sessionId={session.id}
              run={current}
              isLeft={current.id === leaving}
              context={context}
              pad={pad}
              rows={rows}
              shown={shown}
              finding={said && !isBetween && !isSaidSilent ? sayRun(said.report, said.isBeaten) : undefined}
              isCovered={edited !== undefined}
              onEditLast={(lapId) => edit(lapId, "field")}
              above={above}
            />
          </FaultBoundary>
        )}
        {!isOpen && says}
        <div className={styles["runs"]}>
          {comparing.first && <CompareBar {...comparing.first} onCancel={comparing.forget} />}
          <FaultBoundary what="What was half typed before">
            <Suspense fallback={null}>
              {current === undefined && (
                <StrandedEntry sessionId={session.id} shown={shown} context={context} />
              )}
              <EditsLeft
                data={data}
                shown={shown}
                current={current}
                context={context}
                edited={edited}
                onEdit={edit}
              />
            </Suspense>
          </FaultBoundary>
          {[...blocks].reverse().map(({ run, number }) =>
            run === undefined ? (
              <RunGap key={number} number={number} />
            ) : (
              <FaultBoundary key={run.id} what={`Run ${number}`}>
                <RunBlock
                  data={data}
                  run={run}
                  number={number}
                  shown={shown}
                  rows={rows.get(run.id) ?? []}
                  standingId={figures.standingId}
                  contextOf={figures.contextOf}
                  edited={edited}
                  onEdit={edit}
                  saidOf={number === said?.number ? undefined : figures.saidOf}
                  isSaid={number === figures.beforeSaid}
                  isCurrent={run === current}
                  isSilent={isSilent(run)}
                  isBefore={current !== undefined && !isBetween && number === beforeCurrent}
                />
              </FaultBoundary>
            ),
          )}
          {isOpen && buttons}
        </div>
        {isOpen && says}
        <Suspense fallback={null}>
          {dialog === "summary" && (
            <SummaryDialog
              data={data}
              run={current && lapsInOrder(current).length === 0 ? current : undefined}
              context={context}
              onClose={() => setDialog(undefined)}
            />
          )}
          {dialog === "end" && (
            <EndSession data={data} drivingMs={drivingMs(runs)} onClose={() => setDialog(undefined)} />
          )}
        </Suspense>
      </div>
    </RunStrips>
  );
});
