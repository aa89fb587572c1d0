import { Fragment } from "react";
import { type CalendarDate, comboName, sayDate } from "#domain";
import { type RigAnswer, type RigTestPage, useCombos, useFigures } from "#live";
import { printAddress, type RigAddress } from "#state/address.ts";
import { classes } from "#ui/classes.ts";
import { Name } from "#ui/Name.tsx";
import { rigAnswerShift, sayPairsDriven, sayRigEvidence, sayRigName } from "#words";
import { LastTest } from "./LastTest.tsx";
import styles from "./RigFront.module.css";
import { RigReading } from "./RigReading.tsx";
import { RigTimeline } from "./RigTimeline.tsx";
import { inForceParts, rigChanges } from "./rigWords.ts";
import type { Placed } from "./timeline.ts";

const ways: readonly { readonly word: string; readonly to: Omit<RigAddress, "place"> }[] = [
  { word: "Something changed", to: { change: {} } },
  { word: "Test a change", to: { part: "plan" } },
  { word: "Work out my field of view", to: { part: "screen" } },
  { word: "Work out my gain", to: { part: "wheel" } },
];

interface RigFrontProps {
  /** Oldest first. */
  readonly records: readonly Placed[];
  readonly today: CalendarDate;
}

/** The rig at a glance: what is in force, what the last change and the last test did, the ways on, and all records. */
export function RigFront({ records, today }: RigFrontProps) {
  const { value: answers, isRenewing } = useFigures("rigAnswers", { today });
  const [latest] = answers ?? [];
  const { value: tests = [] } = useFigures("rigTestPages", {});
  const lastTest = lastOver(tests, latest);
  const reach = reachOf(latest, lastTest);
  const newest = records.findLast(({ rig, before }) => before !== undefined && rig.from <= today);
  return (
    <>
      <InForce placed={records.find(({ isInForce }) => isInForce)} />
      <UnderWay tests={tests} />
      <div className={styles["answers"]} aria-busy={isRenewing}>
        {answers === undefined && records.length > 1 && <p>Working out what the last change did</p>}
        {latest && (
          <LastChange
            answer={latest}
            records={records}
            newer={newest?.rig.id === latest.rig.id ? undefined : newest}
            reach={reach}
          />
        )}
        {answers && lastTest && (
          <LastTest page={lastTest} records={records.map(({ rig }) => rig)} reach={reach} />
        )}
      </div>
      <RigWays />
      <RigTimeline records={records} tests={tests} answers={answers ?? []} today={today} />
    </>
  );
}

/** The test that was over last; undefined where it has answered about the last change already. */
function lastOver(tests: readonly RigTestPage[], latest: RigAnswer | undefined): RigTestPage | undefined {
  const last = tests
    .filter(({ report }) => report.isOver)
    .toSorted((a, b) => (a.test.endedAt ?? a.test.createdAt) - (b.test.endedAt ?? b.test.createdAt))
    .at(-1);
  return latest?.tests.at(-1)?.id === last?.test.id ? undefined : last;
}

/** How far from none the two answers reach, ms: their lines stand side by side. */
function reachOf(latest: RigAnswer | undefined, test: RigTestPage | undefined): number {
  const change = latest && rigAnswerShift(latest);
  const found = test?.report.verdict.known ? test.report.verdict.value : undefined;
  return Math.max(
    1,
    ...[change, found].flatMap((one) => (one ? [Math.abs(one.low), Math.abs(one.high)] : [])),
  );
}

/** The things to do here: the first one is the main one; before there is a record nothing can have changed. */
export function RigWays({ isFirst }: { readonly isFirst?: true }) {
  return (
    <nav aria-label="What to do" className={styles["ways"]}>
      {ways
        .filter(({ to }) => isFirst === undefined || to.change === undefined)
        .map(({ word, to }) => (
          <a
            key={word}
            href={printAddress({ place: "rig", ...to })}
            className={classes(styles["way"], to.change !== undefined && styles["main"])}
          >
            {word}
          </a>
        ))}
    </nav>
  );
}

function InForce({ placed }: { readonly placed: Placed | undefined }) {
  if (placed === undefined) return <p>No record is in force today: the first one begins later.</p>;
  const { rig } = placed;
  const parts = inForceParts(rig);
  return (
    <p className={styles["inForce"]}>
      <strong>In force since {sayDate(rig.from)}:</strong>{" "}
      {parts.length === 0 && "nothing of screen, wheel and pedals is written down. "}
      {parts.map((part) => (
        <Fragment key={part}>
          <span className={styles["whole"]}>{part}</span> ·{" "}
        </Fragment>
      ))}
      <a className={styles["sheet"]} href={printAddress({ place: "rig", rigId: rig.id })}>
        The full sheet
      </a>
    </p>
  );
}

/** The tests that are not over yet. */
function UnderWay({ tests }: { readonly tests: readonly RigTestPage[] }) {
  return tests
    .filter(({ report }) => !report.isOver)
    .map(({ test: { id, question }, report }) => (
      <p key={id}>
        A test is under way, {sayPairsDriven(report)}:{" "}
        <a href={printAddress({ place: "rig", testId: id })}>
          <Name>{question}</Name>
        </a>
      </p>
    ));
}

interface LastChangeProps {
  readonly answer: RigAnswer;
  readonly records: readonly Placed[];
  /** A change after it, about which nothing can be said yet. */
  readonly newer: Placed | undefined;
  readonly reach: number;
}

function LastChange({ answer, records, newer, reach }: LastChangeProps) {
  const combo = useCombos()?.find(({ id }) => id === answer.comboId);
  const placed = records.find(({ rig }) => rig.id === answer.rig.id);
  const changes = placed?.before ? rigChanges(placed.before, placed.rig, "without notes") : [];
  return (
    <section aria-label="The last change" className={styles["answer"]}>
      <p className={styles["about"]}>
        {newer ? "The last change that was driven with" : "The last change"}, {sayDate(answer.rig.from)}:{" "}
        <a href={printAddress({ place: "rig", rigId: answer.rig.id })}>
          <Name>{sayRigName(answer.rig)}</Name>
        </a>
        {changes.length > 0 && ` (${changes.join(" · ")})`}
      </p>
      <RigReading answer={answer} reach={reach} />
      <p className={styles["soft"]}>
        {combo && <Name>{comboName(combo)}</Name>}
        {combo && ", "}
        {sayRigEvidence(answer)}
      </p>
      {newer && (
        <p className={styles["soft"]}>
          Not enough is driven yet to tell what{" "}
          <a href={printAddress({ place: "rig", rigId: newer.rig.id })}>
            the change of {sayDate(newer.rig.from)}
          </a>{" "}
          did.
        </p>
      )}
    </section>
  );
}
