import { useState } from "react";
import { addRig } from "#db";
import type { CalendarDate, FormReading, RigSettings } from "#domain";
import { useDraft, useLogbook, useWriteForm } from "#live";
import { withinSlider } from "#physics";
import { Button } from "#ui/Button.tsx";
import { Choice } from "#ui/Choice.tsx";
import { Columns } from "#ui/Columns.tsx";
import { classes } from "#ui/classes.ts";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Part } from "#ui/Part.tsx";
import { sayGainChosen, sayOtherInForce } from "#words";
import { CautionOf } from "../CautionOf.tsx";
import { recordFrom } from "../recordFrom.ts";
import { GainFound } from "./GainFound.tsx";
import {
  type GainFigure,
  type GainTexts,
  type GainValues,
  gainMeasures,
  gainTextsFrom,
  missingFigure,
  offeredGain,
  readGainTexts,
  workOutGain,
} from "./gainSum.ts";
import { RimForce } from "./RimForce.tsx";
import { sayGainRecord } from "./sayGainRecord.ts";
import { WavePicture } from "./WavePicture.tsx";
import styles from "./Wheel.module.css";

interface WheelSumProps {
  readonly inForce: RigSettings | undefined;
  readonly today: CalendarDate;
  readonly onStored: () => void;
}

const ways = [
  { value: "peak", label: "the strongest force" },
  { value: "share", label: "how long it is at the limit" },
] as const;

/** What the figures of each way are. */
const meanings = {
  peak: "The peak in percent of the limit, over a few laps; the reserve is kept free under the limit.",
  share: "In percent of the time, over a few laps. 1 % wanted is common practice, no source.",
} as const;

/** The gain that a force seen over a few laps asks for, what it does to a turn and to the hands, and a way to store it. */
export function WheelSum({ inForce, today, onStored }: WheelSumProps) {
  const { book } = useLogbook();
  const [id] = useState(() => book.newId());
  const [typing, setTyping] = useState<GainFigure>();
  const start = gainTextsFrom(inForce);
  // Only what was typed, and what it belongs to, is kept, so that a new record in force shows through.
  const draft = useDraft<Partial<GainTexts>>("rig gain", {}, typedFigures);
  const kept = { ...start, ...draft.value };
  const { values } = readGainTexts(kept);
  const found = workOutGain(kept.way, values);
  const missing = missingFigure(kept.way, values);
  const now = values.gain;
  const held = found?.known && now !== undefined ? withinSlider(now, found.value) : undefined;
  const offered = held && now !== undefined ? offeredGain(now, held) : "";
  const texts: GainTexts = { ...kept, chosen: draft.value.chosen ?? offered };
  const reading = readGainTexts(texts);
  const chosen = reading.values.chosen;
  const set = (next: GainTexts | undefined) =>
    draft.set(next && differing(next, { ...start, chosen: offered }));
  const { box, field, submit } = useWriteForm<
    GainTexts,
    GainValues & { chosen: number },
    Awaited<ReturnType<typeof addRig>>
  >({
    typed: { value: texts, set },
    reading: withChosen(reading),
    write: (to, value) =>
      addRig(to, {
        id,
        ...recordFrom(inForce, {
          from: today,
          ...sayGainRecord(texts.way, value, found),
          wheel: wheelOf(inForce, value),
        }),
      }),
    isUndoOffered: true,
    onStored,
  });
  // A figure is called wrong once it is left, not while it is being typed.
  const problemOf = (key: GainFigure) => (reading.ok || key === typing ? undefined : reading.problems[key]);
  const figure = (key: GainFigure) => {
    const { name, unit } = gainMeasures[key];
    const typed = field(key);
    return (
      <Field
        label={name}
        figures
        size="between"
        inputMode="decimal"
        unit={unit}
        {...typed}
        problem={typed.problem ?? problemOf(key)}
        onFocus={() => setTyping(key)}
        // A line that comes while a button is being pressed would push the button away from under it.
        onBlur={({ relatedTarget: next }) => next instanceof HTMLButtonElement || setTyping(undefined)}
      />
    );
  };
  const seen = texts.way === "peak" ? "peak" : "share";
  const outside =
    held && now !== undefined && chosen !== undefined ? sayGainChosen(chosen, now, held) : undefined;
  const inForceGain = inForce?.wheel.gainPercent;
  const isOther = texts[seen] !== "" && now !== undefined && inForceGain !== undefined && inForceGain !== now;
  const asked = (
    <>
      <div className={styles["ask"]}>
        <div className={styles["onScreen"]}>
          <Choice label="I saw" size="between" options={ways} {...field("way")} />
        </div>
        <div className={styles["figures"]}>
          {figure("gain")}
          {figure(seen)}
          {figure(seen === "peak" ? "reserve" : "wanted")}
        </div>
        <CautionOf part="wheel" torque={values.torque} />
        <p className={classes(styles["soft"], styles["onScreen"])}>{meanings[seen]}</p>
        {isOther && <p>{sayOtherInForce(inForceGain)}</p>}
      </div>
      <GainFound
        way={texts.way}
        values={values}
        unread={missing !== undefined && problemOf(missing) ? missing : undefined}
        found={found}
        held={held}
        onOtherWay={() => set({ ...texts, way: texts.way === "peak" ? "share" : "peak" })}
      />
      {found?.known && (
        <p className={styles["onPaper"]}>
          {sayGainRecord(texts.way, values, found).note}
          {chosen !== undefined && ` Gain to store: ${chosen} %.`}
        </p>
      )}
      <div className={styles["ask"]}>
        <div className={styles["store"]}>
          {figure("chosen")}
          <Button type="submit" variant="primary" size="between">
            Store this gain
          </Button>
        </div>
        <p className={classes(styles["soft"], outside === undefined && styles["onScreen"])}>
          {outside ?? "It begins a new record, from today on."}
        </p>
      </div>
    </>
  );
  const drawn = (
    <>
      <WavePicture way={texts.way} values={reading.values} />
      <Part title="At the hands" level={3}>
        <div className={styles["fields"]}>
          {figure("torque")}
          {figure("rimRadius")}
        </div>
        <RimForce way={texts.way} values={reading.values} />
      </Part>
    </>
  );
  if (!draft.isRead) return null;
  return (
    <form ref={box} noValidate aria-label="Work out my gain" onSubmit={submit}>
      <Part title="Work out my gain" ruled>
        <HalfTyped of={draft} />
        <Columns>
          {asked}
          {drawn}
        </Columns>
      </Part>
    </form>
  );
}

/** What of the texts is not what stands there by itself; with what was seen, the gain at which it was. */
function differing(texts: GainTexts, start: GainTexts): Partial<GainTexts> {
  const keys = Object.keys(texts) as (keyof GainTexts)[];
  const isSeen = texts.peak !== "" || texts.share !== "";
  const isKept = (key: keyof GainTexts) => texts[key] !== start[key] || (isSeen && key === "gain");
  return Object.fromEntries(keys.filter(isKept).map((key) => [key, texts[key]]));
}

/** The figures that were typed, as an offer to take them up names them. */
function typedFigures({ gain = "", peak = "", share = "", chosen = "" }: Partial<GainTexts>): string {
  return [gain, peak, share, chosen].filter((text) => text !== "").join(" · ");
}

/** A gain to store is the one thing that has to be there. */
function withChosen(
  reading: ReturnType<typeof readGainTexts>,
): FormReading<GainValues & { readonly chosen: number }, GainFigure> {
  if (!reading.ok) return reading;
  const { chosen } = reading.value;
  if (chosen !== undefined) return { ok: true, value: { ...reading.value, chosen } };
  const wrong = { wrong: "There is no gain to store yet.", right: "Type what you saw, or a gain." };
  return { ok: false, problems: { chosen: wrong } };
}

/** The wheel with its new gain; a torque or radius that was emptied here stays as it was written down. */
function wheelOf(
  rig: RigSettings | undefined,
  { chosen, torque, rimRadius }: GainValues & { chosen: number },
) {
  return {
    ...rig?.wheel,
    gainPercent: chosen,
    ...(torque !== undefined && { torque }),
    ...(rimRadius !== undefined && { rimRadius }),
  };
}
