import type { Figure } from "#domain";
import { type GainRange, headroomDecibels } from "#physics";
import { Button } from "#ui/Button.tsx";
import {
  sayDecibels,
  sayGain,
  sayHeadroom,
  sayHeldGain,
  sayMendFirst,
  sayNoGain,
  sayStepUp,
  wantedForGain,
  whyGainIsARange,
} from "#words";
import {
  type GainFigure,
  type GainValues,
  type GainWay,
  gainMeasures,
  missingFigure,
  offeredGain,
} from "./gainSum.ts";
import styles from "./Wheel.module.css";

interface GainFoundProps {
  readonly way: GainWay;
  readonly values: GainValues;
  /** A figure that is needed and was left unreadable. */
  readonly unread: GainFigure | undefined;
  readonly found: Figure<GainRange> | undefined;
  /** The part of it that a slider reaches. */
  readonly held: GainRange | undefined;
  readonly onOtherWay: () => void;
}

/** The gain worked out, large; under it the headroom, or why it is a range; or what stands in the way. */
export function GainFound({ way, values, unread, found, held, onOtherWay }: GainFoundProps) {
  const { gain, peak, share } = values;
  if (found === undefined) {
    const missing = missingFigure(way, values);
    return (
      <p role="status" className={styles["waiting"]}>
        {unread === undefined ? missing && wantedForGain[missing] : sayMendFirst(gainMeasures[unread].name)}
      </p>
    );
  }
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
