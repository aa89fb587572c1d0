import type { Corner, GapUnit } from "#domain";
import { Choice } from "#ui/Choice.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { ChosenCorners } from "../ChosenCorners.tsx";
import { CornerNumbers, type ToldCorners } from "./CornerNumbers.tsx";
import styles from "./Review.module.css";
import type { LookedAt } from "./reviewDraft.ts";
import type { ReviewedSession } from "./reviewedLaps.ts";
import { heldName, WhichLap } from "./WhichLap.tsx";

interface ReviewSetUpProps {
  readonly lap: LookedAt | undefined;
  readonly onLap: (lap: LookedAt | undefined) => void;
  readonly last: ReviewedSession | undefined;
  readonly held: ReviewedSession | undefined;
  readonly unit: GapUnit;
  readonly onUnit: (unit: GapUnit) => void;
  readonly carWidth: number;
  readonly isCarAssumed: boolean;
  readonly corners: readonly Corner[];
  readonly chosen: readonly number[];
  readonly onChosen: (numbers: readonly number[]) => void;
  readonly onTold: (told: ToldCorners) => void;
}

const units = [
  { value: "cars", label: "car widths" },
  { value: "metres", label: "metres" },
] as const;

/** What a review is of: lap, corners and unit. Folded, its line says all of it, for it rarely needs another answer. */
export function ReviewSetUp(props: ReviewSetUpProps) {
  const { lap, onLap, last, held, unit, onUnit, carWidth, isCarAssumed, corners, chosen, onChosen, onTold } =
    props;
  const answer = [
    lap === undefined ? "the usual lap" : heldName(lap, held),
    chosen.length === corners.length && chosen.length > 3
      ? `all ${chosen.length} corners`
      : `${chosen.length === 1 ? "corner" : "corners"} ${chosen.join(", ") || "none"}`,
    unit === "cars" ? "car widths" : "metres",
  ];
  return (
    <Disclosure title="Lap, corners, unit" level={2} answer={answer.join(" · ")}>
      <div className={styles["setUp"]}>
        <ChosenCorners label="Corners to look at" corners={corners} chosen={chosen} onChange={onChosen} />
        <CornerNumbers isFirst={false} onTold={onTold} />
        <WhichLap lap={lap} onLap={onLap} last={last} held={held} />
        <Choice
          label="Gaps are typed in"
          size="between"
          options={units}
          value={unit}
          onChange={onUnit}
          hint={`A car’s width is ${carWidth} m${isCarAssumed ? ", which is assumed: nothing is known of this car’s" : ""}.`}
        />
      </div>
    </Disclosure>
  );
}
