import type { Figure } from "#domain";
import { type GainRange, headroomDecibels } from "#physics";
import { Button } from "#ui/Button.tsx";
import {
  sayDecibels,
  sayGain,
  sayHeadroom,
  sayHeldGain,
  sayNoGain,
  sayStepUp,
  whyGainIsARange,
} from "#words";
import { type GainValues, type GainWay, offeredGain } from "./gainSum.ts";
import styles from "./Wheel.module.css";

interface GainFoundProps {
  readonly way: GainWay;
  readonly values: GainValues;
  readonly found: Figure<GainRange> | undefined;
  /** The part of it that a slider reaches. */
  readonly held: GainRange | undefined;
  readonly onOtherWay: () => void;
}

/** The gain worked out, large; under it the headroom, or why it is a range; or what stands in the way. */
export function GainFound({ way, values, found, held, onOtherWay }: GainFoundProps) {
  const { gain, peak, share } = values;
  if (found === undefined)
    return (
      <p role="status" className={styles["waiting"]}>
        {sayWanted(way, values)}
      </p>
    );
  if (!found.known) {
    const isOtherWay = way === "peak" ? (peak ?? 0) >= 100 : share === 0;
    return (
      <div role="status" className={styles["found"]}>
        <p>{sayNoGain(found.reason)}</p>
        {isOtherWay && (
          <p>
            <Button size="between" onClick={onOtherWay}>
              {way === "peak" ? "I saw how long it is at the limit" : "I saw the strongest force"}
            </Button>
          </p>
        )}
      </div>
    );
  }
  const now = gain ?? 0;
  const range = held ?? found.value;
  const first = offeredGain(now, range);
  const isUp = Number(first) > now;
  // At the slider's end there is no step left to take.
  const isAtEnd = range.low === now && range.high === now;
  return (
    <div role="status" className={styles["found"]}>
      <p>
        <span className={styles["name"]}>New gain</span>{" "}
        <strong className={styles["large"]}>{sayGain(range)}</strong>
      </p>
      {way === "peak" && peak !== undefined ? (
        <p>
          Headroom now {sayHeadroomOf(peak)}.
          {!isAtEnd && ` At ${sayGain(range)} it is ${sayHeadroomOf((peak * range.high) / now)}.`}
        </p>
      ) : (
        !isAtEnd && <p>{whyGainIsARange(first, isUp)}</p>
      )}
      {range.high < found.value.high && <p>{sayHeldGain(found.value)}</p>}
      {way === "peak" && isUp && Number(first) < Math.floor(range.low) && <p>{sayStepUp(first)}</p>}
    </div>
  );
}

function sayHeadroomOf(peak: number): string {
  const decibels = headroomDecibels({ peak, limit: 100 });
  return `${sayDecibels(decibels)}: ${sayHeadroom(decibels)}`;
}

/** What is still to be typed. */
function sayWanted(way: GainWay, { gain }: GainValues): string {
  if (gain === undefined) return "Type the gain you drive with now, and what you saw.";
  return way === "peak"
    ? "Drive a few laps, watch how strong the force gets, and type the strongest you saw."
    : "Drive a few laps, watch how long the force is at the limit, and type its share of the time.";
}
