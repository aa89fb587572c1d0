import { useEffect } from "react";
import { cornerRanges, type FormReading } from "#domain";
import { type Measure, readCornerNumbers, readMeasure } from "#entry";
import { useForm, useTyped } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import styles from "./Review.module.css";

/** Numbers of corners: those to be looked at, and all there are as far as that was said. */
export interface ToldCorners {
  readonly chosen: readonly number[];
  readonly all: readonly number[];
}

interface CornerNumbersProps {
  /** The layout has none yet: then they may also be counted. */
  readonly isFirst: boolean;
  /** Numbers that stand ready, for they are known from elsewhere. */
  readonly ready?: readonly number[];
  readonly onTold: (told: ToldCorners) => void;
}

interface Texts {
  readonly numbers: string;
  readonly count: string;
}

const count: Measure = { name: "Corners of a lap", unit: "", least: 1, most: 99, isWhole: true };
const isMissing = { wrong: "No corner is named", right: "Write their numbers, such as 3 5 9" };

/** Corners by their numbers, typed where the layout does not have them: a number is enough for a review. */
export function CornerNumbers({ isFirst, ready = [], onTold }: CornerNumbersProps) {
  const typed = useTyped<Texts>({ numbers: ready.toSorted((a, b) => a - b).join(" "), count: "" });
  const { box, field, submit } = useForm<Texts, ToldCorners>({
    typed,
    reading: readTold(typed.value),
    onRead: (told) => {
      typed.set(undefined);
      onTold(told);
    },
  });
  useEffect(() => {
    const first = isFirst ? box.current?.querySelector("input") : undefined;
    first?.focus();
    // What stands ready is typed over, or taken with Enter.
    first?.select();
  }, [isFirst, box]);
  return (
    <form ref={box} noValidate className={styles["numbers"]} onSubmit={submit}>
      <Field
        label={isFirst ? "Corners to look at" : "Other corners"}
        size="between"
        inputMode="text"
        data-home={isFirst || undefined}
        hint="their numbers, such as 3 5 9"
        {...field("numbers")}
      />
      {isFirst && (
        <Field
          label={count.name}
          figures
          inputMode="numeric"
          size="between"
          hint="how many, if you know"
          {...field("count")}
        />
      )}
      <Button type="submit" size="between" variant={isFirst ? "primary" : "plain"}>
        {isFirst ? "Begin" : "Add"}
      </Button>
    </form>
  );
}

function readTold({ numbers, count: many }: Texts): FormReading<ToldCorners, keyof Texts> {
  const named = readCornerNumbers(numbers);
  const counted = readMeasure(many, count);
  if (!named.ok) return { ok: false, problems: { numbers: named.problem } };
  if (!counted.ok) return { ok: false, problems: { count: counted.problem } };
  const all = Array.from({ length: counted.value ?? 0 }, (_, index) => index + 1);
  if (named.numbers.length === 0 && all.length === 0) return { ok: false, problems: { numbers: isMissing } };
  const last = named.numbers.at(-1) ?? 0;
  if (counted.value !== undefined && last > counted.value)
    return {
      ok: false,
      problems: {
        count: {
          wrong: `Corner ${last} is beyond the ${counted.value} of a lap`,
          right: `Write at least ${Math.min(last, cornerRanges.number.most)}, or leave it empty`,
        },
      },
    };
  return {
    ok: true,
    value: {
      chosen: named.numbers.length > 0 ? named.numbers : all,
      all: all.length > 0 ? all : named.numbers,
    },
  };
}
