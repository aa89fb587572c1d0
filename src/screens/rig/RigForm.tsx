import { useEffect, useState } from "react";
import type { Change, Fields, Logbook } from "#db";
import { askDate, isDateAsked, practiceDay, type RigSettings, sayDate } from "#domain";
import { type FormField, type Typed, useLogbook, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Field } from "#ui/Field.tsx";
import { Part } from "#ui/Part.tsx";
import { TextArea } from "#ui/TextArea.tsx";
import { CautionOf } from "./CautionOf.tsx";
import styles from "./Rig.module.css";
import { RigFieldInput } from "./RigFieldInput.tsx";
import { isAsked, type RigField, type RigPart, rigFields, rigParts } from "./rigFields.ts";
import { type RigTexts, readRig, textKey } from "./rigTexts.ts";
import { rigChanges, sayChanges } from "./rigWords.ts";
import { screenBeingTyped } from "./screenView.ts";
import { TrueToSize } from "./TrueToSize.tsx";
import { torqueBeingTyped } from "./torqueBeingTyped.ts";
import { useTestOfField } from "./useTestOfField.ts";

interface RigFormProps {
  readonly title: string;
  /** The field that is wanted: it stands alone and has the focus, the others are one press away. */
  readonly first?: RigField | undefined;
  /** The texts of the open form. */
  readonly typed: Typed<RigTexts>;
  /** The record put right, if any. */
  readonly old?: RigSettings | undefined;
  /** The record that what is typed is compared with, while typing. */
  readonly compared: RigSettings | undefined;
  readonly write: (book: Logbook, fields: Fields<RigSettings>) => Promise<Change>;
  readonly onStored: () => void;
  readonly onCancel: () => void;
}

/** Fields that a caution stands right behind. */
const cautionAfter: readonly string[] = ["wheel.gainPercent", "view.degrees"];

/** A record of the rig as fields with their units. Nothing has to be filled in but the date. */
export function RigForm(props: RigFormProps) {
  const { title, first, typed, old, compared, write, onStored, onCancel } = props;
  const texts = typed.value;
  const reading = readRig(texts, old);
  const count = reading.ok ? 0 : Object.keys(reading.problems).length;
  const { clock, zone } = useLogbook().surroundings;
  const now = clock();
  const [asked, setAsked] = useState<string>();
  const from = reading.ok ? reading.value.from : undefined;
  const today = practiceDay(now, zone(), 0);
  const isDoubtful = from !== undefined && from !== old?.from && isDateAsked(from, today, now);
  const isAgreed = () => {
    if (!isDoubtful || asked === from) return true;
    setAsked(from);
    return false;
  };
  const form = { typed, reading, isAgreed, write, isUndoOffered: true, onStored };
  const { box, field, isRefused, submit } = useWriteForm(form);
  const [isUnfolded, setWhole] = useState(first === undefined);
  const firstKey = first && textKey(first);
  const isWrongElsewhere =
    isRefused && !reading.ok && Object.keys(reading.problems).some((key) => key !== firstKey);
  const isWhole = isUnfolded || isWrongElsewhere;
  useEffect(() => {
    const place = firstKey === undefined ? null : box.current?.querySelector(`[data-field="${firstKey}"]`);
    const inputs = "input:checked, input:not([type=radio]), textarea, input";
    const wanted = (place ?? box.current)?.querySelector<HTMLInputElement>(inputs);
    wanted?.focus();
    if (place && wanted?.type !== "radio") wanted?.select();
  }, [box, firstKey, isUnfolded]);
  const testOf = useTestOfField(compared, reading.ok ? reading.value : undefined);
  /** A field nothing has been typed into has no text yet. */
  const filled = (key: string) => ({ ...field(key), value: texts[key] ?? "" });
  return (
    <form ref={box} noValidate aria-label={title} className={styles["form"]} onSubmit={submit}>
      {isWhole ? (
        <AllFields title={title} texts={texts} filled={filled} testOf={testOf} />
      ) : (
        first && (
          <Part title={title} ruled>
            <div className={styles["fields"]}>
              <OneField
                field={first}
                texts={texts}
                typed={filled(textKey(first))}
                test={testOf(textKey(first))}
              />
            </div>
            <p className={styles["soft"]}>
              From {from === undefined ? "today" : sayDate(from)} on.{" "}
              <Button variant="quiet" size="between" onClick={() => setWhole(true)}>
                All fields
              </Button>
            </p>
          </Part>
        )
      )}
      {isWhole && <TextArea label="Note" dir="auto" {...filled("note")} />}
      <div className={styles["foot"]}>
        <div role="status">
          {isRefused && count > 0 && <p>Not stored yet: {fieldsToMend(count)}.</p>}
          {isDoubtful && asked === from && <p>{askDate("record", from)} Store it once more to keep it.</p>}
        </div>
        {old === undefined && from === today && <p>In an open session it holds from the next run.</p>}
        {reading.ok && compared && <p>{sayChanges(rigChanges(compared, reading.value))}</p>}
        <ButtonRow
          others={
            <Button size="between" onClick={onCancel}>
              Cancel
            </Button>
          }
          main={
            <Button type="submit" variant="primary" size="between">
              Store
            </Button>
          }
        />
      </div>
    </form>
  );
}

interface AllFieldsProps {
  readonly title: string;
  readonly texts: RigTexts;
  readonly filled: (key: string) => FormField<string>;
  /** What a rig test has to do with a value as it is typed. */
  readonly testOf: (key: string) => string | undefined;
}

function AllFields({ title, texts, filled, testOf }: AllFieldsProps) {
  const ofPart = (part: RigPart) =>
    rigFields.filter((field) => field.part === part && isAsked(field, texts["screen.kind"] || undefined));
  return (
    <>
      <Part title={title} ruled>
        <div className={styles["fields"]}>
          <Field label="From" hint="such as 14 Oct 2026" size="between" {...filled("from")} />
          <Field
            label="Name of the record"
            hint="what it is about, such as: gain down"
            size="between"
            dir="auto"
            {...filled("name")}
          />
        </div>
      </Part>
      {(Object.keys(rigParts) as RigPart[]).map((part) => (
        <Part key={part} title={rigParts[part]} level={3} ruled>
          <div className={styles["fields"]}>
            {ofPart(part).map((one) => (
              <OneField
                key={textKey(one)}
                field={one}
                texts={texts}
                typed={filled(textKey(one))}
                test={testOf(textKey(one))}
              />
            ))}
          </div>
        </Part>
      ))}
    </>
  );
}

interface OneFieldProps {
  readonly field: RigField;
  readonly texts: RigTexts;
  readonly typed: FormField<string>;
  readonly test: string | undefined;
}

/** A field with what belongs beside it: the view worked out, the test that lasts, the caution. */
function OneField({ field, texts, typed, test }: OneFieldProps) {
  const key = textKey(field);
  return (
    <>
      <div data-field={key} className={field.kind === "measure" ? undefined : styles["wide"]}>
        <RigFieldInput field={field} typed={typed} />
      </div>
      {test !== undefined && (
        <p role="status" className={styles["wide"]}>
          {test}
        </p>
      )}
      {key === "view.degrees" && <TrueToSize screen={screenBeingTyped(texts)} />}
      {cautionAfter.includes(key) && (
        <div className={styles["wide"]}>
          <CautionOf part={field.part} torque={torqueBeingTyped(texts)} />
        </div>
      )}
    </>
  );
}

function fieldsToMend(count: number): string {
  return count === 1 ? "one field has to be mended" : `${count} fields have to be mended`;
}
