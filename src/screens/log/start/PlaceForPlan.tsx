import styles from "./Lately.module.css";

/** The plan comes in late: meanwhile the place of a usual one is kept, so that what follows moves as little as can be. */
export function PlaceForPlan() {
  return <div className={styles["place"]} />;
}
