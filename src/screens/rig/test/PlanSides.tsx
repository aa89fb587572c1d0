import type { RigSettings } from "#domain";
import type { Form } from "#live";
import { Choice } from "#ui/Choice.tsx";
import { Field } from "#ui/Field.tsx";
import { Name } from "#ui/Name.tsx";
import { Select } from "#ui/Select.tsx";
import { CautionOf } from "../CautionOf.tsx";
import { RigFieldInput } from "../RigFieldInput.tsx";
import type { RigField } from "../rigFields.ts";
import { saidOf } from "../rigWords.ts";
import type { PlanField } from "./planFields.ts";
import styles from "./Test.module.css";
import type { TypedPlan } from "./typedPlan.ts";

interface PlanSidesProps {
  readonly typed: TypedPlan;
  readonly form: Pick<Form<TypedPlan, HTMLFormElement>, "field" | "set">;
  /** Those to choose from, in their order. */
  readonly fields: readonly PlanField[];
  readonly picked: RigField | undefined;
  readonly inForce: RigSettings | undefined;
}

/** What differs between A and B: a value of the rig, or something in words. */
export function PlanSides({ typed, form, fields, picked, inForce }: PlanSidesProps) {
  return (
    <>
      <Choice
        label="What differs"
        size="between"
        options={[
          { value: "value", label: "a value of the rig" },
          { value: "words", label: "something else" },
        ]}
        {...form.field("differs")}
      />
      {typed.differs === "words" ? (
        <div className={styles["pair"]}>
          <Field
            label="A"
            hint="as it is now, such as: without gloves"
            size="between"
            dir="auto"
            {...form.field("wordsA")}
          />
          <Field
            label="B"
            hint="what is tried, such as: with gloves"
            size="between"
            dir="auto"
            {...form.field("wordsB")}
          />
        </div>
      ) : (
        <>
          <Select
            label="Which value"
            options={[
              { value: "", label: "choose one" },
              ...fields.map(({ key, field, said }) => ({
                value: key,
                label: said === undefined ? field.label : `${field.label}: ${said}`,
              })),
            ]}
            {...form.field("field")}
            onChange={(key) => form.set({ field: key, valueA: "", valueB: "" })}
          />
          {picked && <ValuesOf field={picked} form={form} inForce={inForce} />}
        </>
      )}
    </>
  );
}

interface ValuesOfProps extends Pick<PlanSidesProps, "form" | "inForce"> {
  readonly field: RigField;
}

/** A as the record in force has it, B as it is typed, and the caution that belongs to trying it. */
function ValuesOf({ field, form, inForce }: ValuesOfProps) {
  const said = inForce && saidOf(inForce, field);
  // What the field says of itself is said by A and B here.
  const { hint: _, ...bare } = field;
  const labelled = (label: string): RigField => ({ ...bare, label });
  return (
    <>
      <div className={styles["pair"]}>
        {said === undefined ? (
          <RigFieldInput field={labelled("A, as it is now")} typed={form.field("valueA")} />
        ) : (
          <p className={styles["settled"]}>
            <span className={styles["soft"]}>A, in force now</span>
            <strong className={styles["words"]}>
              <Name>{`${field.name} ${said}`}</Name>
            </strong>
          </p>
        )}
        <RigFieldInput field={labelled("B, what is tried")} typed={form.field("valueB")} />
      </div>
      <CautionOf part={field.part === "screen" ? "view" : field.part} torque={inForce?.wheel.torque} />
    </>
  );
}
