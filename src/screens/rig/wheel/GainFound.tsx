import type { Figure } from "#domain";
import { type GainRange, headroomDecibels } from "#physics";
import { Button } from "#ui/Button.tsx";
import {
  gainDigits,
  gainOver100,
  sayDecibels,
  sayGain,
  sayHeadroom,
  sayNoGain,
  whyGainIsARange,
} from "#words";
import { type GainValues, type GainWay, offeredGain } from "./gainSum.ts";
import styles from "./Wheel.module.css";

interface GainFoundProps {
  readonly way: GainWay;
  readonly values: GainValues;
  readonly found: Figure<GainRange> | undefined;
  readonly onOtherWay: () => void;
}

/** The gain worked out, large; under it the headroom, or why it is a range; or what stands in the way. */
export function GainFound({ way, values, found, onOtherWay }: GainFoundProps) {
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
  return (
    <div role="status" className={styles["found"]}>
      <p>
        <span className={styles["name"]}>New gain</span>{" "}
        <strong className={styles["large"]}>{sayGain(found.value)}</strong>
      </p>
      {way === "peak" && peak !== undefined ? (
        <p>
          Headroom now {sayHeadroomOf(peak)}. At {sayGain(found.value)} it is{" "}
          {sayHeadroomOf((peak * found.value.high) / now)}.
        </p>
      ) : (
        <p>{whyGainIsARange(offeredGain(now, found.value))}</p>
      )}
      {Number(gainDigits(found.value.high)) > 100 && <p>{gainOver100}</p>}
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
