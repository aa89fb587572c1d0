import type { RigSettings } from "#domain";
import styles from "./Rig.module.css";
import { sayTrueSize } from "./screenView.ts";

/** The field of view that the screen fills at the driver's eye, beside the one set in the simulator. */
export function TrueToSize({ screen }: { readonly screen: RigSettings["screen"] }) {
  const said = sayTrueSize(screen);
  if (said === undefined) return null;
  return (
    <dl className={styles["worked"]}>
      <dt>True to size at this screen</dt>
      <dd>{said}</dd>
    </dl>
  );
}
