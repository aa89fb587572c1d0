import { useState } from "react";
import { dateDoubt, isDateAsked, practiceDay, type Session, sayDate } from "#domain";
import { useLogbook } from "#live";
import { Button } from "#ui/Button.tsx";
import { Checkbox } from "#ui/Checkbox.tsx";
import { Field } from "#ui/Field.tsx";
import styles from "../runs/RunDialog.module.css";

/** Turns a new page from this session on; where the date it would begin on is in doubt, it has to wait until that is right. */
export function NewPageForm({
  session,
  onTurn,
}: {
  /** Its date is that of the page. */
  readonly session: Session;
  readonly onTurn: (isForAll: boolean, reason: string) => Promise<void>;
}) {
  const [reason, setReason] = useState("");
  const [isForAll, setForAll] = useState(false);
  const { clock, zone } = useLogbook().surroundings;
  const now = clock();
  const today = practiceDay(now, zone(), 0);
  const isAhead = isDateAsked(session.date, today, now);
  if (isAhead || dateDoubt(session, today) === "early")
    return (
      <p>
        A new page begins with its session, and this one is dated {sayDate(session.date)},{" "}
        {isAhead ? "after tomorrow" : "by a clock that stood wrong"}. Put its date right first.
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
