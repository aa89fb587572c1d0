import { Fragment, type ReactNode, useEffect, useState } from "react";
import type { Fields } from "#db";
import { askDate, isDateAsked, practiceDay, type RigSettings } from "#domain";
import { useLogbook } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Part } from "#ui/Part.tsx";
import { TextArea } from "#ui/TextArea.tsx";
import { useToProblem } from "#ui/useToProblem.ts";
import { cautions } from "#words";
import styles from "./Rig.module.css";
import { RigFieldInput } from "./RigFieldInput.tsx";
import { isAsked, type RigPart, rigFields, rigParts } from "./rigFields.ts";
import { type RigTexts, readRig, textKey } from "./rigTexts.ts";
import { rigChanges } from "./rigWords.ts";
import { screenBeingTyped } from "./screenView.ts";
import { TrueToSize } from "./TrueToSize.tsx";

interface RigFormProps {
  readonly title: string;
  readonly texts: RigTexts;
  readonly onText: (key: string, text: string) => void;
  /** The record put right, if any. */
  readonly old?: RigSettings | undefined;
  /** The record that what is typed is compared with, while typing. */
  readonly compared: RigSettings | undefined;
  readonly onStore: (fields: Fields<RigSettings>) => void;
  readonly onCancel: () => void;
}

/** Fields that a caution stands right behind. */
const cautionAfter: readonly string[] = ["wheel.gainPercent", "view.degrees"];

/** A record of the rig as fields with their units. Nothing has to be filled in but the date. */
export function RigForm({ title, texts, onText, old, compared, onStore, onCancel }: RigFormProps) {
  const { form, toProblem } = useToProblem();
  const [isRefused, setRefused] = useState(false);
  useEffect(() => form.current?.querySelector("input")?.focus(), [form]);
  const reading = readRig(texts, old);
  const problems = reading.ok || !isRefused ? {} : reading.problems;
  const count = reading.ok ? 0 : Object.keys(reading.problems).length;
  const { clock, zone } = useLogbook().surroundings;
  const now = clock();
  const [asked, setAsked] = useState<string>();
  const from = reading.ok ? reading.fields.from : undefined;
  const isDoubtful =
    from !== undefined && from !== old?.from && isDateAsked(from, practiceDay(now, zone(), 0), now);
  const submit = () => {
    if (isDoubtful && asked !== from) return setAsked(from);
    if (reading.ok) return onStore(reading.fields);
    setRefused(true);
    toProblem();
  };
  const ofPart = (part: RigPart) =>
    rigFields.filter((field) => field.part === part && isAsked(field, texts["screen.kind"] || undefined));
  return (
    <form
      ref={form}
      noValidate
      aria-label={title}
      className={styles["form"]}
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <Part title={title} ruled>
        <div className={styles["fields"]}>
          <Field
            label="From"
            hint="2026-10-14 or 14 Oct 2026"
            size="between"
            value={texts["from"] ?? ""}
            onChange={(text) => onText("from", text)}
            problem={problems["from"]}
          />
          <Field
            label="Name of the record"
            hint="what it is about, such as: gain down"
            size="between"
            dir="auto"
            value={texts["name"] ?? ""}
            onChange={(text) => onText("name", text)}
            problem={problems["name"]}
          />
        </div>
      </Part>
      {(Object.keys(rigParts) as RigPart[]).map((part) => (
        <Part key={part} title={rigParts[part]} level={3} ruled>
          <div className={styles["fields"]}>
            {ofPart(part).map((field) => (
              <Fragment key={textKey(field)}>
                <div className={field.kind === "measure" ? undefined : styles["wide"]}>
                  <RigFieldInput
                    field={field}
                    text={texts[textKey(field)] ?? ""}
                    onText={(text) => onText(textKey(field), text)}
                    problem={problems[textKey(field)]}
                  />
                </div>
                {textKey(field) === "view.degrees" && <TrueToSize screen={screenBeingTyped(texts)} />}
                {cautionAfter.includes(textKey(field)) && (
                  <div className={styles["wide"]}>
                    <CautionOf part={part} />
                  </div>
                )}
              </Fragment>
            ))}
          </div>
        </Part>
      ))}
      <TextArea
        label="Note"
        dir="auto"
        value={texts["note"] ?? ""}
        onChange={(text) => onText("note", text)}
        problem={problems["note"]}
      />
      <div className={styles["foot"]}>
        <div role="status">
          {isRefused && count > 0 && <p>Not stored yet: {fieldsToMend(count)}.</p>}
          {isDoubtful && asked === from && <p>{askDate("record", from)} Store it once more to keep it.</p>}
        </div>
        {reading.ok && compared && <p>{sayChanges(rigChanges(compared, reading.fields))}</p>}
        <div className={styles["buttons"]}>
          <Button type="submit" variant="primary" size="between">
            Store
          </Button>
          <Button size="between" onClick={onCancel}>
            Cancel
          </Button>
        </div>
      </div>
    </form>
  );
}

function fieldsToMend(count: number): string {
  return count === 1 ? "one field has to be mended" : `${count} fields have to be mended`;
}

function sayChanges(changes: readonly string[]): string {
  return changes.length === 0
    ? "Nothing differs yet from the record before."
    : `Changed: ${changes.join(" · ")}`;
}

/** The caution that belongs to a part of the rig, in sight of its fields. */
export function CautionOf({ part }: { readonly part: RigPart }): ReactNode {
  if (part !== "wheel" && part !== "view") return null;
  return (
    <Notice tone="caution">
      <p>{part === "wheel" ? cautions.wheel : cautions.health}</p>
    </Notice>
  );
}
