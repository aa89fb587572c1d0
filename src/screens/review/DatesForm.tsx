import { type FormEvent, useState } from "react";
import { type CalendarDate, type Id, isCalendarDate } from "#domain";
import { goTo } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import styles from "./PeriodPicker.module.css";

interface DatesFormProps {
  readonly comboId: Id;
  readonly from: CalendarDate | "";
  readonly to: CalendarDate;
}

/** The first and the last day of a chosen period. */
export function DatesForm({ comboId, from, to }: DatesFormProps) {
  const [first, setFirst] = useState<string>(from);
  const [last, setLast] = useState<string>(to);
  const [isRefused, setRefused] = useState(false);
  const problems = problemsOf(first, last);

  const show = (event: FormEvent) => {
    event.preventDefault();
    if (problems.first !== undefined || problems.last !== undefined) return setRefused(true);
    goTo({ place: "review", comboId, period: { kind: "dates", from: first, to: last } });
  };
  return (
    <form className={styles["form"]} aria-label="Chosen dates" noValidate onSubmit={show}>
      <Field
        label="First day"
        type="date"
        value={first}
        onChange={setFirst}
        problem={isRefused ? problems.first : undefined}
      />
      <Field
        label="Last day"
        type="date"
        value={last}
        onChange={setLast}
        problem={isRefused ? problems.last : undefined}
      />
      <Button type="submit">Show these dates</Button>
    </form>
  );
}

function problemsOf(first: string, last: string) {
  if (!isCalendarDate(first))
    return { first: "No first day is chosen. Pick the day the review begins with." };
  if (!isCalendarDate(last)) return { last: "No last day is chosen. Pick the day the review ends with." };
  return first <= last
    ? {}
    : { last: "The last day lies before the first. Pick a later one, or an earlier first day." };
}
