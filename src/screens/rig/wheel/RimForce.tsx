import { rimForce, rimTorque } from "#physics";
import { sayRimForce } from "#words";
import type { GainValues, GainWay } from "./gainSum.ts";
import styles from "./Wheel.module.css";

interface RimForceProps {
  readonly way: GainWay;
  readonly values: GainValues;
}

/** The strongest torque at the gain to be stored, and what it is at the hands. */
export function RimForce({ way, values }: RimForceProps) {
  const { gain = 0, peak = 0, chosen = gain, torque, rimRadius } = values;
  if (torque === undefined)
    return <p className={styles["soft"]}>With the torque of the wheel this says how strong it gets.</p>;
  const strongest = rimTorque({ torque, peak: way === "peak" && gain > 0 ? (peak * chosen) / gain : 100 });
  if (!strongest.known) return null;
  const force =
    rimRadius === undefined ? undefined : rimForce({ torque: strongest.value, radius: rimRadius });
  return (
    <>
      <p>
        At {chosen} % the strongest is <strong>{strongest.value.toFixed(1)} N·m</strong> at the rim
        {force?.known && <>: {sayRimForce(force.value)}</>}.
      </p>
      <p className={styles["soft"]}>
        The limit is taken as the {torque} N·m that the wheel can give at most
        {rimRadius === undefined && "; with the radius of the rim this says the force at the hands"}.
      </p>
    </>
  );
}
