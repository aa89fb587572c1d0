import { useState } from "react";
import { renewTarget } from "#db";
import { addDays, type CalendarDate, daysBetween, type Id, sayDate, type Target } from "#domain";
import { useLogbook, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";

interface RenewTargetProps {
  /** One that was missed. */
  readonly target: Target;
  /** The figure now. */
  readonly now: number | undefined;
  readonly today: CalendarDate;
  readonly onRenewed: (targetId: Id) => void;
}

/** Fewer days are no date to practise for. */
const leastDays = 7;
/** No forecast looks further. */
const mostDays = 365;

/** Sets a missed target once more in one press: the same time, as many days ahead as it had. */
export function RenewTarget({ target, now, today, onRenewed }: RenewTargetProps) {
  const write = useWrite();
  const { surroundings } = useLogbook();
  // One for as long as the button is there, so that pressing twice makes no second target.
  const [newId] = useState(() => surroundings.newId());
  const { id, by = today, setOn } = target;
  const days = Math.min(mostDays, Math.max(leastDays, daysBetween(setOn, by)));
  const newBy = addDays(today, days);
  const renew = async () => {
    const renewal = { id, newId, by: newBy, setOn: today, start: now };
    if (await write((book) => renewTarget(book, renewal), { isUndoOffered: true })) onRenewed(newId);
  };
  return (
    <Button variant="primary" onClick={() => void renew()}>
      Same time, new date: {sayDate(newBy)}
    </Button>
  );
}
