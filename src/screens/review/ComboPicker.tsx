import { useRef, useState } from "react";
import { daysDriven } from "#db";
import { sayDate } from "#domain";
import { type DrivenCombo, useRows, useUntil } from "#live";
import { goTo, type Period, printAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Combobox } from "#ui/Combobox.tsx";
import { Name } from "#ui/Name.tsx";
import styles from "./ComboPicker.module.css";

interface ComboPickerProps {
  readonly combo: DrivenCombo;
  readonly combos: readonly DrivenCombo[];
  readonly period: Period;
}

const mostInAList = 6;

/** The combo looked at, and the way to another one: a list, or where there are many a field to search in. */
export function ComboPicker({ combo, combos, period }: ComboPickerProps) {
  const [isOpen, setOpen] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  const close = () => {
    setOpen(false);
    opener.current?.focus();
  };
  const others = combos.filter(({ id }) => id !== combo.id);
  return (
    <div className={styles["picker"]}>
      <div className={styles["head"]}>
        <h1 className={styles["name"]}>
          <Name>{combo.name}</Name>
        </h1>
        {others.length > 0 && (
          <Button ref={opener} variant="quiet" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
            Another combo
          </Button>
        )}
      </div>
      {isOpen && (
        <div className={styles["others"]}>
          <Others others={others} period={period} onPicked={close} />
        </div>
      )}
    </div>
  );
}

interface OthersProps {
  readonly others: readonly DrivenCombo[];
  readonly period: Period;
  readonly onPicked: () => void;
}

function Others({ others, period, onPicked }: OthersProps) {
  const [text, setText] = useState("");
  const until = useUntil();
  const days = useRows((book) => daysDriven(book, until), [until]);
  // Chosen dates belong to one combo's history, a rolling period to any.
  const kept: Period = period.kind === "dates" ? { kind: "12w" } : period;
  const driven = ({ id, drivenAt }: DrivenCombo) => {
    const day = days?.get(id);
    if (day !== undefined) return `last driven ${sayDate(day)}`;
    return drivenAt === undefined ? "not driven yet" : "";
  };
  if (others.length <= mostInAList)
    return (
      <ul className={styles["list"]}>
        {others.map((other) => (
          <li key={other.id}>
            <a
              href={printAddress({ place: "review", comboId: other.id, period: kept })}
              onClick={onPicked}
              className={styles["link"]}
            >
              <Name>{other.name}</Name>
            </a>
            <span className={styles["detail"]}>{driven(other)}</span>
          </li>
        ))}
      </ul>
    );
  return (
    <Combobox
      label="Combo"
      hint="Type a part of its name, or press Down for the list."
      text={text}
      onText={setText}
      options={others.map((other) => ({ id: other.id, label: other.name, detail: driven(other) }))}
      onPick={({ id }) => {
        onPicked();
        goTo({ place: "review", comboId: id, period: kept });
      }}
    />
  );
}
