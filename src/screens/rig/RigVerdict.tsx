import { useMemo } from "react";
import { IntervalLine } from "#charts/interval/IntervalLine.tsx";
import { LapStrip } from "#charts/strip/LapStrip.tsx";
import { type StripScale, stripScale } from "#charts/strip/stripScale.ts";
import { type StripLap, sayDate } from "#domain";
import type { FoundRigTest } from "#live";
import { printAddress } from "#state/address.ts";
import type { RigStep, SideOfStep } from "#stats";
import { Name } from "#ui/Name.tsx";
import { asSentence, counted, saidSides, sayNeither, sayRigStep, sayTestOfSide, sayUsual } from "#words";
import styles from "./Rig.module.css";
import { SessionDates } from "./SessionDates.tsx";
import { TestInterval } from "./TestInterval.tsx";

interface RigVerdictProps {
  /** Of the combo. */
  readonly name: string;
  /** Pairs of runs with both settings, where there are any. */
  readonly tests: readonly FoundRigTest[];
  /** The weeks before and after; where pairs have spoken, only what can be told. */
  readonly step: RigStep | undefined;
}

/** One combo about a change of the rig: what pairs of runs say, and then what the weeks before and after do. */
export function RigVerdict({ name, tests, step }: RigVerdictProps) {
  return (
    <article className={styles["verdict"]}>
      <h4>
        <Name>{name}</Name>
      </h4>
      {tests.map((test) => (
        <InPairs key={test.id} test={test} />
      ))}
      {step && (step.step.known || tests.length === 0) && (
        <Evenings step={step} isSecond={tests.length > 0} />
      )}
    </article>
  );
}

/** The verdict of a rig test in words and as an interval, and the evenings on which it was driven. */
function InPairs({
  test: { test, records, side, against, report, sessions },
}: {
  readonly test: FoundRigTest;
}) {
  const { sayA, sayB } = saidSides(test, records);
  const [own, other] = side === "B" ? [sayB, sayA] : [sayA, sayB];
  return (
    <>
      <p className={styles["found"]}>{sayTestOfSide(report, side)}</p>
      <TestInterval report={report} side={side} />
      <p className={styles["soft"]}>
        <Name>{asSentence(own)}</Name> against{" "}
        {against ? (
          <a href={printAddress({ place: "rig", rigId: against.id })}>
            <Name>{other}</Name>
          </a>
        ) : (
          <Name>{other}</Name>
        )}
        , <a href={printAddress({ place: "rig", testId: test.id })}>a test</a> with{" "}
        {counted(report.complete, "pair")} of runs
        {sessions.length > 0 && ", driven on "}
        <SessionDates sessions={sessions} className={styles["whole"]} />.
      </p>
    </>
  );
}

interface EveningsProps {
  readonly step: RigStep;
  /** Pairs of runs have spoken first. */
  readonly isSecond: boolean;
}

/** The evenings before and after on one scale, the verdict in words, the interval. */
function Evenings({ step: { before, after, neither, step }, isSecond }: EveningsProps) {
  const scale = useMemo(() => scaleOf([before, after]), [before, after]);
  const said = sayRigStep({ step, after });
  return (
    <>
      {isSecond ? (
        <>
          <p className={styles["soft"]}>From the weeks before and after alone:</p>
          <p>{said}</p>
        </>
      ) : (
        <p className={styles["found"]}>{said}</p>
      )}
      {step.known && <p className={styles["soft"]}>Not a test: you were also practising.</p>}
      {before && after && (
        <div className={styles["sides"]}>
          <Side title="before" side={before} scale={scale} />
          <Side title="after" side={after} scale={scale} />
        </div>
      )}
      {step.known && <IntervalLine {...step.value} />}
      {sayNeither(neither).map((sentence) => (
        <p key={sentence} className={styles["soft"]}>
          {sentence}
        </p>
      ))}
    </>
  );
}

interface SideProps {
  readonly title: "before" | "after";
  readonly side: SideOfStep;
  readonly scale: StripScale | undefined;
}

function Side({ title, side, scale }: SideProps) {
  const laps = useMemo(() => lapsOf(side), [side]);
  const lines = useMemo(() => ({ usual: side.usual }), [side]);
  return (
    <div className={styles["side"]}>
      <p className={styles["soft"]}>
        {title}: <span className={styles["usual"]}>{sayUsual(side.usual.ms, side.usual.decimals)}</span> in{" "}
        {counted(side.sessions.length, "session")}
      </p>
      <LapStrip
        size="full"
        name={`Usual laps ${title}, one a session`}
        laps={laps}
        lines={lines}
        scale={scale}
      />
    </div>
  );
}

/** The usual lap of each session as a lap of a strip. */
function lapsOf({ sessions }: SideOfStep): StripLap[] {
  return sessions.map(({ sessionId, date, usual }) => ({
    id: sessionId,
    name: sayDate(date),
    ms: usual.ms,
    decimals: usual.decimals,
  }));
}

/** One scale for both sides, with the lines of both. */
function scaleOf(sides: readonly (SideOfStep | undefined)[]): StripScale | undefined {
  return stripScale(sides.flatMap((side) => (side === undefined ? [] : lapsOf(side))));
}
