import { useState } from "react";
import { turnPage } from "#db";
import { dateDoubt, isDateAsked, practiceDay, type Session, sayDate } from "#domain";
import { useDraft, useLogbook, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { Checkbox } from "#ui/Checkbox.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import styles from "../runs/RunDialog.module.css";

/** Turns a new page from this session on; where the date it would begin on is in doubt, it has to wait until that is right. */
export function NewPageForm({
  session,
  onTurned,
}: {
  /** Its date is that of the page. */
  readonly session: Session;
  readonly onTurned: () => void;
}) {
  const draft = useDraft(`page ${session.id}`, { reason: "" });
  const [isForAll, setForAll] = useState(false);
  const { field, submit } = useWriteForm({
    typed: draft,
    reading: { ok: true, value: draft.value.reason.trim() },
    write: (book, reason) =>
      turnPage(book, { comboIds: isForAll ? "all" : [session.comboId], from: session.startedAt, reason }),
    isUndoOffered: true,
    onStored: onTurned,
  });
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
        readable, in grey, and counts in no figure.
      </p>
      <HalfTyped of={draft} />
      <Field label="What changed" maxLength={500} {...field("reason")} hint="For example: new tyre model" />
      <Checkbox
        size="between"
        label="For all combos, not only this one"
        checked={isForAll}
        onChange={setForAll}
      />
      <Button size="between" onClick={submit}>
        Turn a new page
      </Button>
    </div>
  );
}
