import { formatDelta, type Id } from "#domain";
import type { WeekMain } from "#stats";
import { Name } from "#ui/Name.tsx";
import { type AccountLineName, accountLineNames, accountReading, accountTitle } from "#words";
import styles from "./Statement.module.css";

const lines: readonly AccountLineName[] = ["pace", "repeatability", "mistakes", "others"];

interface StatementAccountProps {
  readonly main: WeekMain;
  readonly nameOf: (comboId: Id) => string;
}

/** The week's time account of the combo driven most, on one line of figures that add up. */
export function StatementAccount({ main, nameOf }: StatementAccountProps) {
  const { account } = main.week;
  return (
    <div className={styles["account"]}>
      <h3>
        Where a lap on <Name>{nameOf(main.comboId)}</Name> went this week
      </h3>
      <p>{accountTitle({ account })}</p>
      {account.known && (
        <dl className={styles["sum"]}>
          {lines.map((line) => (
            <div key={line}>
              <dt>{accountLineNames[line]}</dt>
              <dd>{formatDelta(account.value[line])} s</dd>
            </div>
          ))}
          <div className={styles["balance"]}>
            <dt>mean lap in all</dt>
            <dd>{formatDelta(account.value.balance)} s</dd>
          </div>
        </dl>
      )}
      {account.known && <p className={styles["soft"]}>{accountReading({ account })}</p>}
    </div>
  );
}
