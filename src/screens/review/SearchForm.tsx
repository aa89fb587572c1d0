import { useState } from "react";
import { focuses, type Preferences, remarkKinds, type SearchTerms } from "#domain";
import { useForm } from "#live";
import { goTo } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { narrowerThan } from "#ui/breakpoints.ts";
import { Disclosure } from "#ui/Disclosure.tsx";
import { Field, type FieldProps } from "#ui/Field.tsx";
import { Select } from "#ui/Select.tsx";
import { useMedia } from "#ui/useMedia.ts";
import styles from "./Search.module.css";
import { readSearch, sayTerms, typedOf } from "./searchFields.ts";
import { printSearch } from "./searchQuery.ts";

interface SearchFormProps {
  /** What the address asks for. */
  readonly terms: SearchTerms;
  readonly preferences: Preferences;
}

type LineProps = Omit<FieldProps, "value" | "onChange" | "problem">;

const any = { value: "", label: "any" } as const;
const remarks = [any, ...remarkKinds.map(({ kind, word }) => ({ value: kind, label: word }))];
const allFocuses = [any, ...focuses.map(({ focus, word }) => ({ value: focus, label: word }))];

/** A phone on its side. */
const lowerThanAPage = "(max-height: 500px)";

/** The fields that stand folded on a phone. */
const folded = ["remark", "focus", "tyres", "from", "to", "shortest", "longest"] as const;

/** What to look for. Searching puts it into the address, so that a result can be left and come back to. */
export function SearchForm({ terms, preferences }: SearchFormProps) {
  const about = JSON.stringify(terms);
  const [{ typed, isOf }, setForm] = useState({ typed: typedOf(terms), isOf: about });
  // Going back in the history puts what was asked for then into the fields.
  if (isOf !== about) setForm({ typed: typedOf(terms), isOf: about });
  const { box, set, field, submit } = useForm({
    typed: { value: typed, set: (next = typedOf(terms)) => setForm({ typed: next, isOf }) },
    reading: readSearch(typed, preferences.displayDecimals),
    onRead: (wanted) => goTo({ place: "review", part: "search", asked: printSearch(wanted) }),
  });
  const empty = () => {
    set(typedOf({}));
    goTo({ place: "review", part: "search", asked: "" });
  };
  const line = (key: "words" | "tyres" | "from" | "to" | "shortest" | "longest", props: LineProps) => (
    <Field {...props} {...field(key)} />
  );
  const isPhone = useMedia(`${narrowerThan("phone")}, ${lowerThanAPage}`);
  const isWrong = folded.some((key) => field(key).problem !== undefined);
  const fields = (
    <div className={styles["fields"]}>
      <Select label="Remark" options={remarks} {...field("remark")} />
      <Select label="Focus" options={allFocuses} {...field("focus")} />
      {line("tyres", { label: "Tyres" })}
      {line("from", { label: "First day", type: "date" })}
      {line("to", { label: "Last day", type: "date" })}
      {line("shortest", { label: "Lap time from", inputMode: "decimal", hint: "Such as 1:23.0" })}
      {line("longest", { label: "Lap time to", inputMode: "decimal", hint: "Such as 1:23.9" })}
    </div>
  );
  return (
    <form ref={box} aria-label="Search the ledger" noValidate className={styles["form"]} onSubmit={submit}>
      {line("words", {
        label: "Words",
        type: "search",
        hint: "In notes, conditions and names of cars and tracks.",
        size: "between",
      })}
      {isPhone ? (
        // Folded, so that what is found stands in sight; a field that is refused is shown.
        <Disclosure
          key={String(isWrong)}
          title="Remark, focus, tyres, days, lap times"
          answer={sayTerms(terms)}
          startOpen={isWrong}
        >
          {fields}
        </Disclosure>
      ) : (
        fields
      )}
      <ButtonRow
        others={
          <Button size="between" onClick={empty}>
            Clear
          </Button>
        }
        main={
          <Button type="submit" variant="primary" size="between">
            Search
          </Button>
        }
      />
    </form>
  );
}
