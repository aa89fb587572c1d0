import { useState } from "react";
import type { CalendarDate, Id } from "#domain";
import { type Period, printAddress } from "#state/address.ts";
import { DatesForm } from "./DatesForm.tsx";
import styles from "./PeriodPicker.module.css";
import { daysOf, rollingPeriods } from "./periods.ts";

interface PeriodPickerProps {
  readonly comboId: Id;
  readonly period: Period;
  readonly today: CalendarDate;
}

const words = [...rollingPeriods, { kind: "all", word: "all" }] as const;

/** How much history is looked at: each period has an address of its own. */
export function PeriodPicker({ comboId, period, today }: PeriodPickerProps) {
  const [isAsked, setAsked] = useState(false);
  const hasDates = period.kind === "dates";
  const isOpen = isAsked || hasDates;
  const { from = "", to = today } = daysOf(period, today);
  return (
    <div className={styles["picker"]}>
      <nav aria-label="Period" className={styles["words"]}>
        {words.map(({ kind, word }) => (
          <a
            key={kind}
            href={printAddress({ place: "review", comboId, period: { kind } })}
            aria-current={period.kind === kind ? "true" : undefined}
            className={styles["word"]}
            onClick={() => setAsked(false)}
          >
            {word}
          </a>
        ))}
        <button
          type="button"
          aria-expanded={isOpen}
          data-here={hasDates}
          className={styles["word"]}
          onClick={() => setAsked(!isOpen)}
        >
          dates
        </button>
      </nav>
      {isOpen && <DatesForm key={`${comboId} ${from} ${to}`} comboId={comboId} from={from} to={to} />}
    </div>
  );
}
