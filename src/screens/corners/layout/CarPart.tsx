import { type CarPatch, editCar } from "#db";
import { type Car, type Corner, carRanges, type FieldProblem } from "#domain";
import { type Measure, writeMeasure } from "#entry";
import { useWrite } from "#live";
import { assumedCar, assumedGrip } from "#physics";
import { Part } from "#ui/Part.tsx";
import { kmh, metres } from "./cornerCells.ts";
import styles from "./Layout.module.css";
import { StoredMeasure } from "./StoredMeasure.tsx";

type Fact = keyof CarPatch;

const topSpeed = kmh("Top speed", carRanges.topSpeed);

const facts: { readonly [F in Fact]-?: { readonly measure: Measure; readonly hint: string } } = {
  width: {
    measure: metres("Width of the car", carRanges.width),
    hint: `empty: ${assumedCar.width} m is assumed`,
  },
  grip: {
    measure: { name: "Grip", unit: "", ...carRanges.grip },
    hint: `sideways force by weight, on a dry road; empty: ${assumedGrip.mid} is assumed, and from ${assumedGrip.low} to ${assumedGrip.high} looked at`,
  },
  braking: {
    measure: { name: "Braking", unit: "m/s²", ...carRanges.braking },
    hint: `also 1.1 g; empty: ${100 * assumedCar.brakingShare} % of what its grip would hold`,
  },
  drive: {
    measure: { name: "Drive", unit: "m/s²", ...carRanges.drive },
    hint: `in the middle of the gears; empty: ${assumedCar.drive} m/s² is assumed`,
  },
  topSpeed: {
    measure: topSpeed,
    hint: `also 150 mph; empty: ${writeMeasure(assumedCar.topSpeed, topSpeed)} km/h is assumed`,
  },
};

interface CarPartProps {
  readonly car: Car;
  readonly corners: readonly Corner[];
}

/** What is known of how the car drives; it holds for all combos of the car. */
export function CarPart({ car, corners }: CarPartProps) {
  const write = useWrite();
  const store = (patch: CarPatch) =>
    write((book) => editCar(book, { carId: car.id, patch, expected: car }), { isUndoOffered: true });
  return (
    <Part title="Car" ruled aside="for all combos of this car">
      <div className={styles["fields"]}>
        {(Object.keys(facts) as Fact[]).map((fact) => (
          <StoredMeasure
            key={fact}
            draftKey={`car ${fact} ${car.id}`}
            measure={facts[fact].measure}
            value={car[fact]}
            onValue={(value) => store({ [fact]: value })}
            hint={facts[fact].hint}
            {...(fact === "width" && { refuse: (width: number) => widerThanRoad(width, corners) })}
          />
        ))}
      </div>
    </Part>
  );
}

function widerThanRoad(width: number, corners: readonly Corner[]): FieldProblem | undefined {
  const narrow = corners.find((corner) => corner.width !== undefined && corner.width <= width);
  if (narrow === undefined) return undefined;
  return {
    wrong: `Width of the car: the road is ${narrow.width} m wide at corner ${narrow.number}.`,
    right: "Write less than that, or put the road right.",
  };
}
