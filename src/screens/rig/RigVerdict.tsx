import { useMemo } from "react";
import { IntervalLine } from "#charts/interval/IntervalLine.tsx";
import { LapStrip } from "#charts/strip/LapStrip.tsx";
import { type StripScale, stripScale } from "#charts/strip/stripScale.ts";
import { type StripLap, sayDate } from "#domain";
import type { RigStep, SideOfStep } from "#stats";
import { Name } from "#ui/Name.tsx";
import { counted, sayNeither, sayRigStep, sayUsual } from "#words";
import styles from "./Rig.module.css";

interface RigVerdictProps {
  /** Of the combo. */
  readonly name: string;
  readonly step: RigStep;
}

/** One combo about a change of the rig: the verdict in words, the evenings before and after on one scale, the interval. */
export function RigVerdict({ name, step: { before, after, neither, step } }: RigVerdictProps) {
  const scale = useMemo(() => scaleOf([before, after]), [before, after]);
  return (
    <article className={styles["verdict"]}>
      <h4>
        <Name>{name}</Name>
      </h4>
      <p className={styles["found"]}>{sayRigStep(step)}</p>
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
    </article>
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
