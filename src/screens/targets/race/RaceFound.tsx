import { RacePicture } from "#charts/race/RacePicture.tsx";
import { fuelNeeded, type RaceDistance, type RaceLength, type RaceOutlook } from "#stats";
import { Columns } from "#ui/Columns.tsx";
import { Part } from "#ui/Part.tsx";
import {
  fuelCaution,
  sayAhead,
  sayCleanRun,
  sayFuel,
  sayFuelLaps,
  sayLongRun,
  sayLongRunMeaning,
  sayRaceLength,
  sayRaceRests,
  sayTooFew,
} from "#words";
import styles from "./RacePage.module.css";
import type { ReadRace } from "./typedRace.ts";

/** A race that was asked about, and the answer. */
export interface FoundRace {
  readonly race: RaceLength;
  readonly outlook: RaceOutlook;
}

interface RaceFoundProps {
  readonly found: FoundRace;
  /** What is typed now: of it only the fuel, which needs no laps driven. */
  readonly race: ReadRace;
  readonly isRenewing: boolean;
}

/** What the laps so far say of a race: picture, length, chances. */
export function RaceFound({ found: { race, outlook }, isRenewing }: Omit<RaceFoundProps, "race">) {
  const { distance, basis } = outlook;
  return (
    <div className={styles["found"]} aria-busy={isRenewing}>
      {distance.known ? (
        <Distance distance={distance.value} race={race} />
      ) : (
        <p className={styles["finding"]}>{sayTooFew(distance.reason)}.</p>
      )}
      <p className={styles["soft"]}>{sayRaceRests(basis)}</p>
    </div>
  );
}

/** The fuel for it, and the pace over a long run. */
export function RaceRun({ found: { race, outlook }, race: typed, isRenewing }: RaceFoundProps) {
  const { distance, trend } = outlook;
  const laps = distance.known ? distance.value.laps : undefined;
  // Of a race of minutes the fuel has to last for the most laps that it may hold.
  const fuelLaps = race.count ?? laps?.high;
  return (
    <div aria-busy={isRenewing}>
      <Columns>
        <Part title="Fuel">
          <Fuel laps={fuelLaps} isForMost={race.count === undefined} typed={typed} />
        </Part>
        <Part title="Over a long run">
          <p>{sayLongRun(trend, race.count ?? laps?.mid)}</p>
          <p className={styles["soft"]}>{sayLongRunMeaning(trend, race.count ?? laps?.mid)}</p>
        </Part>
      </Columns>
    </div>
  );
}

function Distance({ distance, race }: { readonly distance: RaceDistance; readonly race: RaceLength }) {
  const { likely, aheadChance } = distance;
  const { rivalMeanMs } = race;
  return (
    <>
      <RacePicture likely={likely} toBeat={rivalMeanMs} />
      <p className={styles["soft"]}>
        Each dot is the mean lap of one of 20 equally likely races; left is faster
        {rivalMeanMs !== undefined && ", filled is ahead"}.
      </p>
      <p className={styles["finding"]}>{sayRaceLength(distance, race)}</p>
      {aheadChance !== undefined && rivalMeanMs !== undefined && <p>{sayAhead(aheadChance, rivalMeanMs)}</p>}
      <p>{sayCleanRun(distance)}</p>
    </>
  );
}

interface FuelProps {
  readonly laps: number | undefined;
  readonly isForMost: boolean;
  readonly typed: ReadRace;
}

function Fuel({ laps, isForMost, typed: { perLap, reserve = 0 } }: FuelProps) {
  if (perLap === undefined || laps === undefined)
    return <p className={styles["soft"]}>Type what a lap takes, and what is to be left at the end.</p>;
  return (
    <>
      <p>
        <strong>{sayFuel(fuelNeeded({ perLap, laps, reserve }), { laps, perLap, reserve })}</strong>
        {isForMost && ` ${sayFuelLaps(laps)}`}
      </p>
      <p className={styles["soft"]}>{fuelCaution}</p>
    </>
  );
}
