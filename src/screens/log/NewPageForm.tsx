import { useState } from "react";
import { Button } from "#ui/Button.tsx";
import { Checkbox } from "#ui/Checkbox.tsx";
import { Field } from "#ui/Field.tsx";
import styles from "./RunDialog.module.css";

/** Turns a new page from this session on. */
export function NewPageForm({
  onTurn,
}: {
  readonly onTurn: (isForAll: boolean, reason: string) => Promise<void>;
}) {
  const [reason, setReason] = useState("");
  const [isForAll, setForAll] = useState(false);
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
