import { useEffect, useState } from "react";
import type { CalendarDate, Id } from "#domain";
import { useDraft, useFigures, useRested } from "#live";
import type { RaceLength } from "#stats";
import { Choice } from "#ui/Choice.tsx";
import { Columns } from "#ui/Columns.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { type FoundRace, RaceFound, RaceRun } from "./RaceFound.tsx";
import styles from "./RacePage.module.css";
import {
  emptyRace,
  type RaceField,
  type ReadRace,
  raceInWords,
  readRace,
  type TypedRace,
} from "./typedRace.ts";

interface RaceProps {
  readonly comboId: Id;
  readonly today: CalendarDate;
}

const lengths = [
  { value: "laps", label: "laps" },
  { value: "minutes", label: "minutes" },
] as const;

/** How long the typing rests before its race is asked for, ms. */
const restMs = 250;

/** What a race is made of, and what the laps so far say of it. Nothing of it is stored but what is typed. */
export function Race({ comboId, today }: RaceProps) {
  const draft = useDraft<TypedRace>(`race ${comboId}`, emptyRace, raceInWords);
  const [typing, setTyping] = useState<RaceField>();
  const [found, setFound] = useState<FoundRace>();
  const typed = draft.value;
  // The answer before completes a time that is typed short.
  const near = found?.outlook.distance;
  const nearMs = near?.known ? near.value.likely[Math.floor(near.value.likely.length / 2)] : undefined;
  const reading = readRace(typed, nearMs);
  const asked = lengthOf(reading.race);
  const rested = useRested(asked, restMs);
  const isRenewing = JSON.stringify(found?.race) !== JSON.stringify(asked);
  const set = (patch: Partial<TypedRace>) => draft.set({ ...typed, ...patch });
  const field = (key: RaceField) => ({
    value: typed[key],
    onChange: (text: string) => set({ [key]: text }),
    onFocus: () => setTyping(key),
    onBlur: () => setTyping(undefined),
    // A figure is called wrong once it is left, not while it is being typed.
    problem: reading.ok || key === typing ? undefined : reading.problems[key],
    size: "between" as const,
    inputMode: "decimal" as const,
  });
  return (
    <>
      <HalfTyped of={draft} />
      {rested !== undefined && <Asking comboId={comboId} today={today} race={rested} onAnswer={setFound} />}
      <Columns share={7}>
        {asked === undefined ? (
          <p>Type how long the race is.</p>
        ) : found === undefined ? (
          <p>Working out the race</p>
        ) : (
          <RaceFound found={found} isRenewing={isRenewing} />
        )}
        <div className={styles["fields"]}>
          <Choice
            label="The race is counted in"
            size="between"
            value={typed.length}
            options={lengths}
            onChange={(length) => set({ length })}
          />
          <Field
            label={typed.length === "laps" ? "Laps" : "Minutes"}
            {...field("amount")}
            {...(typed.length === "minutes" && {
              hint: "It ends with the first lap that is finished after them.",
            })}
          />
          <Field
            label="Mean lap to beat, if you like"
            {...field("toBeat")}
            hint="Of a rival, or of your last race: type it like 1:23.456"
          />
          <div className={styles["pair"]}>
            <Field label="Fuel a lap" unit="l" figures {...field("perLap")} />
            <Field label="Reserve" unit="l" figures {...field("reserve")} />
          </div>
        </div>
      </Columns>
      {asked !== undefined && found !== undefined && (
        <RaceRun found={found} race={reading.race} isRenewing={isRenewing} />
      )}
    </>
  );
}

interface AskingProps extends RaceProps {
  readonly race: RaceLength;
  readonly onAnswer: (found: FoundRace) => void;
}

/** Asks, and hands the answer on: it stands until the next one comes. */
function Asking({ comboId, today, race, onAnswer }: AskingProps) {
  const { value: outlook } = useFigures("race", { comboId, today, race });
  useEffect(() => {
    if (outlook !== undefined) onAnswer({ race, outlook });
  }, [outlook, race, onAnswer]);
  return null;
}

/** The race as it is asked about; undefined while its length is not known. */
function lengthOf({ count, minutes, rivalMeanMs }: ReadRace): RaceLength | undefined {
  const toBeat = rivalMeanMs === undefined ? {} : { rivalMeanMs };
  if (count !== undefined) return { count, ...toBeat };
  return minutes === undefined ? undefined : { minutes, ...toBeat };
}
