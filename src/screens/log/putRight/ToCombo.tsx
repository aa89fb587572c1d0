import type { AskedCombo, Change, Logbook } from "#db";
import { type FormReading, layoutName } from "#domain";
import { type DrivenCombo, useCombos, useTyped, useWrite, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Name } from "#ui/Name.tsx";
import { ComboFields } from "../start/ComboFields.tsx";
import { namesOf } from "../start/comboChoice.ts";
import { blankCombo, meantBy, readCombo, type TypedCombo } from "../start/typedCombo.ts";
import styles from "./ToCombo.module.css";

const offered = 4;

interface ToComboProps<C extends Change> {
  /** The combo it has now. */
  readonly from: string;
  /** What the button says: "Move the session". */
  readonly deed: string;
  readonly move: (book: Logbook, to: AskedCombo) => Promise<C>;
  readonly onMoved: (change: C) => void;
}

/**
 * The wrong combo was chosen: what was logged goes to the right one in one step, by a press where it was driven lately, by
 * its names where it was not, or is new.
 */
export function ToCombo<C extends Change>(props: ToComboProps<C>) {
  const combos = useCombos();
  const from = combos?.find(({ id }) => id === props.from);
  return combos && from ? <Choose {...props} combos={combos} now={from} /> : null;
}

interface ChooseProps<C extends Change> extends ToComboProps<C> {
  readonly combos: readonly DrivenCombo[];
  readonly now: DrivenCombo;
}

function Choose<C extends Change>({ combos, now, deed, move, onMoved }: ChooseProps<C>) {
  const write = useWrite();
  const typed = useTyped<TypedCombo>({
    ...blankCombo,
    car: now.car.name,
    track: layoutName(now.track, now.layout),
  });
  const names = namesOf(combos);
  const { box, field, set, isBusy, submit } = useWriteForm({
    typed,
    reading: otherThan(now, readCombo(typed.value, { names, combos })),
    write: move,
    isUndoOffered: true,
    onStored: onMoved,
  });
  const others = combos.filter(({ id }) => id !== now.id).slice(0, offered);
  const moveTo = async (comboId: string) => {
    const change = await write((book) => move(book, { comboId }), { isUndoOffered: true });
    if (change) onMoved(change);
  };
  return (
    <>
      {others.length > 0 && (
        <ul className={styles["list"]} aria-label={`${deed} to`}>
          {others.map(({ id, name }) => (
            <li key={id}>
              <Button size="between" className={styles["combo"]} onClick={() => void moveTo(id)}>
                <Name>{name}</Name>
              </Button>
            </li>
          ))}
        </ul>
      )}
      <form ref={box} noValidate className={styles["form"]} onSubmit={submit}>
        <p className={styles["or"]}>
          {others.length > 0 ? "Or by name, a new one too:" : "Name the right one:"}
        </p>
        <ComboFields
          names={names}
          car={field("car")}
          track={field("track")}
          meant={meantBy(typed.value, names)}
          onNew={set}
        />
        <ButtonRow
          main={
            <Button type="submit" size="between" disabled={isBusy}>
              {deed}
            </Button>
          }
        />
      </form>
    </>
  );
}

/** The combo it has already is no other one. */
function otherThan(
  { id, name }: DrivenCombo,
  reading: FormReading<AskedCombo, "car" | "track">,
): FormReading<AskedCombo, "car" | "track"> {
  if (!reading.ok || !("comboId" in reading.value) || reading.value.comboId !== id) return reading;
  const problem = { wrong: `It is with ${name} already`, right: "Change the car, the track, or both" };
  return { ok: false, problems: { car: problem } };
}
