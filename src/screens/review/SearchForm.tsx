import { type FormEvent, useEffect, useRef, useState } from "react";
import { focuses, type Preferences, remarkKinds, type SearchTerms } from "#domain";
import { goTo } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Field, type FieldProps } from "#ui/Field.tsx";
import { Select } from "#ui/Select.tsx";
import styles from "./Search.module.css";
import { readSearch, type TypedSearch, typedOf } from "./searchFields.ts";

interface SearchFormProps {
  /** What the address asks for. */
  readonly terms: SearchTerms;
  readonly preferences: Preferences;
}

const any = { value: "", label: "any" } as const;
const remarks = [any, ...remarkKinds.map(({ kind, word }) => ({ value: kind, label: word }))];
const allFocuses = [any, ...focuses.map(({ focus, word }) => ({ value: focus, label: word }))];

/** What to look for. Searching puts it into the address, so that a result can be left and come back to. */
export function SearchForm({ terms, preferences }: SearchFormProps) {
  const about = JSON.stringify(terms);
  const [{ typed, isOf }, setForm] = useState({ typed: typedOf(terms), isOf: about });
  // Going back in the history puts what was asked for then into the fields.
  if (isOf !== about) setForm({ typed: typedOf(terms), isOf: about });
  const setTyped = (next: TypedSearch) => setForm({ typed: next, isOf });
  const [refusals, setRefusals] = useState(0);
  const form = useRef<HTMLFormElement>(null);
  const read = readSearch(typed, preferences.displayDecimals);
  const shown = refusals > 0 ? read.problems : {};

  useEffect(() => {
    if (refusals > 0) form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
  }, [refusals]);

  const search = (event: FormEvent) => {
    event.preventDefault();
    if (read.terms === undefined) return setRefusals(refusals + 1);
    goTo({ place: "review", part: "search", terms: read.terms });
  };
  const empty = () => {
    setTyped(typedOf({}));
    setRefusals(0);
    goTo({ place: "review", part: "search", terms: {} });
  };
  const field = (key: keyof TypedSearch, label: string, more: Partial<FieldProps> = {}) => (
    <Field
      label={label}
      value={typed[key]}
      onChange={(value) => setTyped({ ...typed, [key]: value })}
      problem={shown[key]}
      {...more}
    />
  );
  return (
    <form ref={form} aria-label="Search the ledger" noValidate className={styles["form"]} onSubmit={search}>
      {field("words", "Words", {
        type: "search",
        hint: "In notes, conditions and names of cars and tracks.",
        size: "between",
      })}
      <div className={styles["fields"]}>
        <Select
          label="Remark"
          value={typed.remark}
          options={remarks}
          onChange={(remark) => setTyped({ ...typed, remark })}
        />
        <Select
          label="Focus"
          value={typed.focus}
          options={allFocuses}
          onChange={(focus) => setTyped({ ...typed, focus })}
        />
        {field("tyres", "Tyres")}
        {field("from", "First day", { type: "date" })}
        {field("to", "Last day", { type: "date" })}
        {field("shortest", "Lap time from", { hint: "Such as 1:23.0" })}
        {field("longest", "Lap time to", { hint: "Such as 1:23.9" })}
      </div>
      <div className={styles["buttons"]}>
        <Button type="submit" variant="primary" size="between">
          Search
        </Button>
        <Button size="between" onClick={empty}>
          Empty all fields
        </Button>
      </div>
    </form>
  );
}
