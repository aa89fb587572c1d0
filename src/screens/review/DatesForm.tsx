import { type CalendarDate, type FormReading, type Id, isCalendarDate } from "#domain";
import { useForm, useTyped } from "#live";
import { goTo } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import styles from "./PeriodPicker.module.css";

interface DatesFormProps {
  readonly comboId: Id;
  readonly from: CalendarDate | "";
  readonly to: CalendarDate;
}

interface TypedDates {
  readonly first: string;
  readonly last: string;
}

/** The first and the last day of a chosen period. */
export function DatesForm({ comboId, from, to }: DatesFormProps) {
  const typed = useTyped<TypedDates>({ first: from, last: to });
  const { box, field, submit } = useForm({
    typed,
    reading: readDates(typed.value),
    onRead: ({ first, last }) =>
      goTo({ place: "review", comboId, period: { kind: "dates", from: first, to: last } }),
  });
  return (
    <form ref={box} className={styles["form"]} aria-label="Chosen dates" noValidate onSubmit={submit}>
      <Field label="First day" type="date" {...field("first")} />
      <Field label="Last day" type="date" {...field("last")} />
      <Button type="submit">Show these dates</Button>
    </form>
  );
}

function readDates({ first, last }: TypedDates): FormReading<TypedDates, keyof TypedDates> {
  const refused = (problems: Partial<TypedDates>) => ({ ok: false, problems }) as const;
  if (!isCalendarDate(first))
    return refused({ first: "No first day is chosen. Pick the day the review begins with." });
  if (!isCalendarDate(last))
    return refused({ last: "No last day is chosen. Pick the day the review ends with." });
  return first <= last
    ? { ok: true, value: { first, last } }
    : refused({ last: "The last day lies before the first. Pick a later one, or an earlier first day." });
}
