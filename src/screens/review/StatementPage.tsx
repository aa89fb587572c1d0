import { daysDriven } from "#db";
import {
  addDays,
  betweenParts,
  type CalendarDate,
  mondayOf,
  sayDate,
  unbroken,
  weekName,
  weekStart,
} from "#domain";
import { useFigures, useRows, useShelvedNow, useUntil } from "#live";
import { type Address, printAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { sayDriven, weekDays, weekTitle } from "#words";
import type { AroundProps } from "./aroundProps.ts";
import styles from "./Statement.module.css";
import { StatementEmpty } from "./StatementEmpty.tsx";
import { StatementSheet } from "./StatementSheet.tsx";

const toWeekOf = (date: CalendarDate): Address => ({
  place: "review",
  part: "statement",
  week: weekName(date),
});

/** One week in ledger form: the one the address names, else the last that was driven. */
export function StatementPage(props: AroundProps) {
  const { address, today } = props;
  const until = useUntil();
  const days = useRows((book) => daysDriven(book, until), [until]);
  const named = address.part === "statement" && address.week !== undefined && mondayOf(address.week);
  if (named) return <Week {...props} monday={named} />;
  if (days === undefined) return <p>Opening the week</p>;
  const last = [...days.values()].sort().at(-1);
  return <Week {...props} monday={weekStart(last ?? today)} />;
}

/** One week on one page, to be read or printed. */
function Week({ combos, today, monday }: AroundProps & { readonly monday: CalendarDate }) {
  const { title } = useShelvedNow();
  const { value, isRenewing } = useFigures("statement", { monday, today });
  const nameOf = new Map(combos.map(({ id, name }) => [id, name]));
  const isLast = addDays(monday, 7) > today;
  return (
    <article className={styles["statement"]} aria-busy={isRenewing}>
      <header className={styles["head"]}>
        <h1>{weekTitle(monday)}</h1>
        <p className={styles["about"]}>
          {weekDays(monday)}
          {betweenParts}
          {title}
          {value !== undefined &&
            betweenParts +
              unbroken(sayDriven(value.statement.total)) +
              betweenParts +
              unbroken(`as of ${sayDate(value.statement.asOf)}`)}
        </p>
        <div className={styles["ways"]}>
          <a href={printAddress(toWeekOf(addDays(monday, -7)))} className={styles["way"]}>
            The week before
          </a>
          {!isLast && (
            <a href={printAddress(toWeekOf(addDays(monday, 7)))} className={styles["way"]}>
              The week after
            </a>
          )}
          {value?.statement.main !== undefined && (
            <Button size="between" onClick={() => window.print()}>
              Print
            </Button>
          )}
        </div>
      </header>
      {value === undefined ? (
        <p>Working out the figures</p>
      ) : value.statement.main === undefined ? (
        <StatementEmpty before={value.before} after={value.after} addressOf={toWeekOf} />
      ) : (
        <StatementSheet
          statement={value.statement}
          today={today}
          nameOf={(id) => nameOf.get(id) ?? "a deleted combo"}
          corners={combos.find(({ id }) => id === value.statement.main?.comboId)?.layout.corners}
        />
      )}
    </article>
  );
}
