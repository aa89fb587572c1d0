import { useState } from "react";
import { type CalendarDate, isAfterTomorrow, practiceDay, sayDate } from "#domain";
import { useLogbook } from "#live";
import { Button } from "#ui/Button.tsx";
import { Checkbox } from "#ui/Checkbox.tsx";
import { Field } from "#ui/Field.tsx";
import styles from "./RunDialog.module.css";

/** Turns a new page from this session on; one that would begin after tomorrow has to wait until the date is right. */
export function NewPageForm({
  begins,
  onTurn,
}: {
  /** Date of the session, and so of the page. */
  readonly begins: CalendarDate;
  readonly onTurn: (isForAll: boolean, reason: string) => Promise<void>;
}) {
  const [reason, setReason] = useState("");
  const [isForAll, setForAll] = useState(false);
  const { clock, zone } = useLogbook().surroundings;
  if (isAfterTomorrow(begins, practiceDay(clock(), zone(), 0)))
    return (
      <p>
        A new page begins with its session, and this one is dated {sayDate(begins)}, after tomorrow. Put its
        date right first.
      </p>
    );
  return (
    <div className={styles["form"]}>
      <p>
        A new page begins with this session: PB, curve and targets start afresh. What came before stays
        readable, in grey, and enters no figure.
      </p>
      <Field
        label="What changed"
        value={reason}
        maxLength={500}
        onChange={setReason}
        hint="For example: new tyre model"
      />
      <Checkbox
        size="between"
        label="For all combos, not only this one"
        checked={isForAll}
        onChange={setForAll}
      />
      <Button size="between" onClick={() => void onTurn(isForAll, reason.trim())}>
        Turn a new page
      </Button>
    </div>
  );
}
