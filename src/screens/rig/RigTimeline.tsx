import { SmallRange } from "#charts/small/SmallRange.tsx";
import { type CalendarDate, practiceDay, type RigSettings, type RigTest, sayDate } from "#domain";
import { type RigAnswer, type RigTestPage, useLogbook } from "#live";
import { printAddress } from "#state/address.ts";
import { classes } from "#ui/classes.ts";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { rigAnswerShift, saidSides, sayRigAnswer, sayRigEvidence, sayTestOfSide } from "#words";
import styles from "./RigTimeline.module.css";
import { rigChanges, saidOfTest } from "./rigWords.ts";
import { onOneLine, type Placed } from "./timeline.ts";

interface RigTimelineProps {
  /** Oldest first. */
  readonly records: readonly Placed[];
  readonly shown?: string | undefined;
  readonly tests: readonly RigTestPage[];
  /** What became of the changes, as far as it is known. */
  readonly answers?: readonly RigAnswer[];
  readonly today: CalendarDate;
}

/** All records and rig tests on one line of time, the newest first, each record with what it changed and what became of it. */
export function RigTimeline({ records, tests: pages, shown, answers = [], today }: RigTimelineProps) {
  const tests = pages.map(({ test }) => test);
  const { surroundings } = useLogbook();
  const dayOf = (moment: number) => practiceDay(moment, surroundings.zone(), 0);
  const ends = answers.flatMap((answer) => {
    const shift = rigAnswerShift(answer);
    return shift === undefined ? [] : [shift.low, shift.high];
  });
  return (
    <Part title="All records">
      <ol className={styles["line"]} aria-label="Records of the rig and rig tests, the newest first">
        {onOneLine(records, tests, dayOf).map((stop) =>
          stop.test === undefined ? (
            <RecordStop
              key={stop.placed.rig.id}
              placed={stop.placed}
              isShown={stop.placed.rig.id === shown}
              answer={answers.find(({ rig }) => rig.id === stop.placed.rig.id)}
              ends={ends}
              today={today}
            />
          ) : (
            <TestStop
              key={stop.test.id}
              page={pages.find(({ test }) => test.id === stop.test.id)}
              test={stop.test}
              on={stop.on}
              records={records.map(({ rig }) => rig)}
            />
          ),
        )}
      </ol>
    </Part>
  );
}

interface RecordStopProps {
  readonly placed: Placed;
  readonly isShown: boolean;
  readonly answer: RigAnswer | undefined;
  /** Of the intervals of all changes, ms. */
  readonly ends: readonly number[];
  readonly today: CalendarDate;
}

function RecordStop({ placed, isShown, answer, ends, today }: RecordStopProps) {
  const { rig, before, isInForce } = placed;
  const changes = before === undefined ? ["the first record"] : rigChanges(before, rig);
  const when = isInForce ? "in force today" : rig.from > today ? "not yet in force" : undefined;
  const shift = answer && rigAnswerShift(answer);
  return (
    <li className={classes(styles["stop"], isInForce && styles["inForce"])}>
      <p className={styles["when"]}>
        <a
          className={styles["date"]}
          href={printAddress({ place: "rig", rigId: rig.id })}
          aria-current={isShown ? "true" : undefined}
        >
          {sayDate(rig.from)}
        </a>
        {when !== undefined && <span className={styles["soft"]}>{when}</span>}
      </p>
      <div className={styles["what"]}>
        {rig.name !== "" && (
          <p className={styles["name"]}>
            <Name>{rig.name}</Name>
          </p>
        )}
        <p className={styles["changes"]}>{changes.length === 0 ? "nothing changed" : changes.join(" · ")}</p>
        {answer && (
          <p className={styles["became"]}>
            {sayRigAnswer(answer)} <span className={styles["soft"]}>({sayRigEvidence(answer)})</span>
          </p>
        )}
      </div>
      {shift && (
        <div className={styles["picture"]}>
          <SmallRange value={shift.estimate} low={shift.low} high={shift.high} among={ends} />
        </div>
      )}
    </li>
  );
}

interface TestStopProps {
  readonly page: RigTestPage | undefined;
  readonly test: RigTest;
  readonly on: CalendarDate;
  readonly records: readonly RigSettings[];
}

/** A rig test where it ended, with what it found, or, not over yet, where it began. */
function TestStop({ page, test, on, records }: TestStopProps) {
  const { id, endedAt, kept } = test;
  const sides = saidSides(test, records);
  return (
    <li className={classes(styles["stop"], styles["test"])}>
      <p className={styles["when"]}>
        <span className={styles["date"]}>{sayDate(on)}</span>
        {endedAt === undefined && <span className={styles["soft"]}>not over yet</span>}
      </p>
      <div className={styles["what"]}>
        <p>
          <a className={styles["tested"]} href={printAddress({ place: "rig", testId: id })}>
            {endedAt === undefined ? "Testing" : "Tested"} <Name>{saidOfTest(test, records)}</Name>
          </a>
        </p>
        {page?.report.isOver && <p className={styles["became"]}>{sayTestOfSide(page.report, "B")}</p>}
        {kept !== undefined && (
          <p className={styles["soft"]}>
            kept <Name>{kept === "A" ? sides.sayA : sides.sayB}</Name>
          </p>
        )}
      </div>
    </li>
  );
}
