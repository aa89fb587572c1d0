import { type FormEvent, useEffect, useRef, useState } from "react";
import { Button } from "./Button.tsx";
import { Field } from "./Field.tsx";
import styles from "./PickReason.module.css";

interface PickReasonProps {
  /** What is asked: "Why is run 3 void?" */
  readonly question: string;
  /** Those most often given: one press each. */
  readonly reasons: readonly string[];
  /** On the button that takes one's own words. */
  readonly deed: string;
  readonly mostSigns: number;
  readonly onPick: (reason: string) => void;
  readonly onCancel: () => void;
}

/** A reason in one press, or in one's own words. */
export function PickReason({ question, reasons, deed, mostSigns, onPick, onCancel }: PickReasonProps) {
  const [own, setOwn] = useState("");
  const group = useRef<HTMLFieldSetElement>(null);
  useEffect(() => group.current?.querySelector("button")?.focus(), []);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (own.trim() !== "") onPick(own.trim());
  };
  return (
    <form onSubmit={submit}>
      <fieldset ref={group} className={styles["box"]}>
        <legend>{question}</legend>
        <div className={styles["reasons"]}>
          {reasons.map((reason) => (
            <Button key={reason} size="between" onClick={() => onPick(reason)}>
              {reason}
            </Button>
          ))}
        </div>
        <div className={styles["own"]}>
          <Field
            label="In other words"
            size="between"
            dir="auto"
            maxLength={mostSigns}
            value={own}
            onChange={setOwn}
          />
          <Button type="submit" size="between" disabled={own.trim() === ""}>
            {deed}
          </Button>
          <Button size="between" variant="quiet" onClick={onCancel}>
            Cancel
          </Button>
        </div>
      </fieldset>
    </form>
  );
}
