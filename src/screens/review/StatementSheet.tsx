import type { CalendarDate, Corner, Id } from "#domain";
import type { WeekStatement } from "#stats";
import { Columns } from "#ui/Columns.tsx";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { sayEvidence, weekFinding, weekNext } from "#words";
import { CornerNext } from "./CornerNext.tsx";
import styles from "./Statement.module.css";
import { StatementAccount } from "./StatementAccount.tsx";
import { StatementAgainst } from "./StatementAgainst.tsx";
import { StatementDriven } from "./StatementDriven.tsx";
import { StatementTargets } from "./StatementTargets.tsx";
import { WeekDays } from "./WeekDays.tsx";

interface StatementSheetProps {
  readonly statement: WeekStatement;
  readonly today: CalendarDate;
  readonly nameOf: (comboId: Id) => string;
  /** Of the layout driven most. */
  readonly corners: readonly Corner[] | undefined;
}

/** What was driven, gained and spent in the week, the targets, the finding that matters most, and what to do next. */
export function StatementSheet({ statement, today, nameOf, corners }: StatementSheetProps) {
  const finding = weekFinding(statement, today);
  const next = weekNext(statement, corners);
  return (
    <>
      <Columns share={7}>
        {finding && (
          <div className={styles["finding"]}>
            <h2 className={styles["found"]}>{finding.title}</h2>
            <p>
              <Name>{nameOf(finding.comboId)}</Name>. {finding.reading}
            </p>
          </div>
        )}
        <WeekDays days={statement.days} />
      </Columns>
      <Part title="Driven" ruled>
        <StatementDriven statement={statement} nameOf={nameOf} />
      </Part>
      <Part title="This week against before" ruled>
        <StatementAgainst statement={statement} today={today} nameOf={nameOf} />
        {statement.main && <StatementAccount main={statement.main} nameOf={nameOf} />}
      </Part>
      <Part title="Targets" ruled>
        <StatementTargets targets={statement.targets} nameOf={nameOf} />
      </Part>
      {next && (
        <Part title="Next" ruled>
          <div>
            <p className={styles["next"]}>{next.suggestion}</p>
            <p>{next.reason}</p>
            <p>What to look at then: {next.check}</p>
            {statement.main && <CornerNext comboId={statement.main.comboId} asOf={statement.asOf} />}
            <p className={styles["soft"]}>{sayEvidence(next.evidence)}</p>
          </div>
        </Part>
      )}
    </>
  );
}
