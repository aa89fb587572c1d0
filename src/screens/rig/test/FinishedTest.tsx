import { SlopeChart } from "#charts/slope/SlopeChart.tsx";
import type { CalendarDate } from "#domain";
import type { RigTestPage } from "#live";
import type { FinishedTestReport } from "#stats";
import { Columns } from "#ui/Columns.tsx";
import {
  counted,
  type SaidSides,
  sayPairsDriven,
  sayPairsFallen,
  sayRigTest,
  sayTestCheck,
  sayTestEstimate,
  sayTestInShort,
} from "#words";
import { SessionDates } from "../SessionDates.tsx";
import { TestInterval } from "../TestInterval.tsx";
import { KeepSetting } from "./KeepSetting.tsx";
import styles from "./Test.module.css";

interface FinishedTestProps {
  readonly page: RigTestPage;
  readonly report: FinishedTestReport;
  readonly sides: SaidSides;
  /** Of the combo. */
  readonly name: string;
  readonly today: CalendarDate;
}

/** A test that is over: the verdict, the pairs behind it, the check, when it was driven, and the choice. */
export function FinishedTest({ page, report, sides, name, today }: FinishedTestProps) {
  const { test, sessions } = page;
  const said = { ...test, ...sides };
  const { verdict, pairs, figure } = report;
  const numbered = report.progress.pairs.filter(({ a, b }) => a !== undefined && b !== undefined);
  const drawn = pairs.map(({ first, a, b }, index) => ({
    number: numbered[index]?.n ?? index + 1,
    first,
    a,
    b,
  }));
  const estimate = sayTestEstimate(report, said);
  const check = sayTestCheck(report, said);
  return (
    <>
      <p className={styles["verdict"]}>{sayRigTest(report, said)}.</p>
      {estimate !== "" && <p>{estimate}</p>}
      <KeepSetting key={test.kept} page={page} sides={sides} today={today} />
      <Columns share={7}>
        {drawn.length > 0 && (
          <SlopeChart
            title={verdict.known ? sayTestInShort(report, said) : "The pairs as they were driven"}
            reading={sayPairsFallen(report)}
            level={3}
            asOf={today}
            fileName={`${name} rig test`}
            pairs={drawn}
            of={figure}
            {...sides}
          />
        )}
        <div className={styles["column"]}>
          {verdict.known && (
            <>
              <p className={styles["soft"]}>
                From A to B: the dot is the estimate, the bar what it may truly be.
              </p>
              <TestInterval report={report} side="B" />
            </>
          )}
          {check !== "" && <p>{check}</p>}
          <p className={styles["soft"]}>
            {sayPairsDriven(report)}: {counted(pairs.length * 2, "run")} count
            {sessions.length > 0 && ", driven on "}
            <SessionDates sessions={sessions} className={styles["date"]} />. They stay out of level, trend and
            forecast.
          </p>
        </div>
      </Columns>
    </>
  );
}
