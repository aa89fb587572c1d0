import { useEffect, useRef, useState } from "react";
import { type CalendarDate, type Figure, formatLapTime, type Id, type TimeKind } from "#domain";
import { useFigures } from "#live";
import type { TargetOutlook } from "#stats";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { sayNoForecast, sayTargetChance } from "#words";
import styles from "./Outlook.module.css";
import { ChanceShown } from "./Outlook.tsx";

/** What is being tried. */
export interface TriedTarget {
  readonly comboId: Id;
  readonly kind: TimeKind;
  readonly laps: number | undefined;
  readonly value: number;
  readonly by: CalendarDate;
  readonly today: CalendarDate;
}

interface Answer {
  readonly of: TriedTarget;
  readonly outlook: Figure<TargetOutlook>;
}

/** How long the typing rests before its chance is asked for, ms. */
const restMs = 250;

/**
 * The chance of a target while it is typed. Asked when the typing has rested and the answer before has come: however fast
 * the keys, one question is on its way. An answer stands, under the time it is of, until the next one comes.
 * @param tried undefined while what is typed is no target
 */
export function Trial({ tried }: { readonly tried: TriedTarget | undefined }) {
  const [asked, setAsked] = useState<TriedTarget>();
  const [answer, setAnswer] = useState<Answer>();
  const latest = useRef(tried);
  latest.current = tried;
  const wanted = tried && JSON.stringify(tried);
  const isAsked = wanted === (asked && JSON.stringify(asked));
  const isFree = answer?.of === asked;
  useEffect(() => {
    if (!isFree || isAsked || wanted === undefined) return;
    const clock = setTimeout(() => setAsked(latest.current), restMs);
    return () => clearTimeout(clock);
  }, [isFree, isAsked, wanted]);
  return (
    <>
      {asked !== undefined && <Question asked={asked} onAnswer={setAnswer} />}
      <LiveRegion message={tried === undefined || !isFree ? "" : spoken(answer)} />
      {tried === undefined ? null : answer === undefined ? (
        <p className={styles["basis"]}>Working out the chance</p>
      ) : (
        <Answered answer={answer} isRenewing={!isAsked || !isFree} />
      )}
    </>
  );
}

interface QuestionProps {
  readonly asked: TriedTarget;
  readonly onAnswer: (answer: Answer) => void;
}

/** Asks, and hands the answer on. */
function Question({ asked, onAnswer }: QuestionProps) {
  const { value: outlook } = useFigures("targetOutlook", asked);
  useEffect(() => {
    if (outlook !== undefined) onAnswer({ of: asked, outlook });
  }, [outlook, asked, onAnswer]);
  return null;
}

function spoken(answer: Answer | undefined): string {
  if (!answer?.outlook.known) return "";
  const { byDate } = answer.outlook.value;
  const { value, by } = answer.of;
  return byDate === undefined ? "" : `${formatLapTime(value)}: ${sayTargetChance(byDate.chance, by)}`;
}

interface AnsweredProps {
  readonly answer: Answer;
  readonly isRenewing: boolean;
}

function Answered({ answer: { of, outlook }, isRenewing }: AnsweredProps) {
  // What else a forecast lacks, the line of suggestions says.
  if (!outlook.known)
    return "because" in outlook.reason &&
      ["already reached", "level there already"].includes(outlook.reason.because) ? (
      <p className={styles["basis"]}>{sayNoForecast(outlook.reason)}</p>
    ) : null;
  return (
    <section aria-label="Its chance" aria-busy={isRenewing} className={styles["outlook"]}>
      <p className={styles["tried"]}>{formatLapTime(of.value)}</p>
      <ChanceShown outlook={outlook.value} by={of.by} today={of.today} />
    </section>
  );
}
