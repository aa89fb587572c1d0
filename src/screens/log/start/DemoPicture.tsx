import { formatLapTime } from "#domain";
import { classes } from "#ui/classes.ts";
import { Spoken } from "#ui/Spoken.tsx";
import { sayUsual } from "#words";
import picture from "../../../../demo-data/picture.json";
import styles from "./DemoPicture.module.css";

const { days, sessions, bests } = picture;
const slowest = Math.max(...sessions.map(({ upper }) => upper));
const fastest = Math.min(...bests.map(({ ms }) => ms));
const second = 1000;
/** Whole seconds of lap time inside the picture. */
const rules = Array.from(
  { length: Math.floor(slowest / second) - Math.ceil(fastest / second) + 1 },
  (_, index) => (Math.ceil(fastest / second) + index) * second,
);

/** Places in percent: days run to the right, slower is higher. A rim is left for the marks at the edges. */
const x = (day: number) => 1 + (98 * day) / days;
const y = (ms: number) => 4 + (92 * (slowest - ms)) / (slowest - fastest);
const path = (points: readonly (readonly [number, number])[]) =>
  points.map(([day, ms], index) => `${index === 0 ? "M" : "L"}${x(day)} ${y(ms)}`).join("");

const band = `${path([
  ...sessions.map(({ day, upper }) => [day, upper] as const),
  ...sessions.toReversed().map(({ day, lower }) => [day, lower] as const),
])}Z`;
const usual = path(sessions.map(({ day, usual: ms }) => [day, ms] as const));
const dots = sessions.map(({ day, usual: ms }) => `M${x(day)} ${y(ms)}h0`).join("");
const [firstBest] = bests;
const steps = path(
  firstBest === undefined
    ? []
    : [
        ...bests.flatMap(({ day, ms }, index) => [
          [day, bests[index - 1]?.ms ?? ms] as const,
          [day, ms] as const,
        ]),
        [days, fastest] as const,
      ],
);

/** What twelve weeks look like in the ledger: usual lap and PB of the demo's driver, drawn from the demo's own laps. */
export function DemoPicture() {
  const [first, last] = [sessions[0], sessions.at(-1)];
  if (first === undefined || last === undefined) return null;
  return (
    <figure className={styles["figure"]}>
      <div className={styles["plot"]} aria-hidden="true">
        <svg className={styles["drawing"]} viewBox="0 0 100 100" preserveAspectRatio="none">
          <title>Progress of the demo’s driver</title>
          <path className={styles["rule"]} d={rules.map((ms) => `M0 ${y(ms)}H100`).join("")} />
          <path className={styles["band"]} d={band} />
          <path className={styles["steps"]} d={steps} />
          <path className={styles["usual"]} d={usual} />
          <path className={styles["dots"]} d={dots} />
        </svg>
        {rules.map((ms) => (
          <span key={ms} className={styles["scale"]} style={{ insetBlockStart: `${y(ms)}%` }}>
            {formatLapTime(ms, 0)}
          </span>
        ))}
        <span
          className={classes(styles["label"], styles["above"])}
          style={{ insetBlockStart: `${y(last.usual)}%` }}
        >
          usual {sayUsual(last.usual, 1)}
        </span>
        <span
          className={classes(styles["label"], styles["below"])}
          style={{ insetBlockStart: `${y(fastest)}%` }}
        >
          PB {sayUsual(fastest, 1)}
        </span>
      </div>
      <figcaption className={styles["caption"]}>
        Demo: a made-up driver’s twelve weeks. Lower is faster.
        <Spoken>
          {" "}
          Usual lap {sayUsual(first.usual, 1)} at first, {sayUsual(last.usual, 1)} at the end; PB{" "}
          {sayUsual(fastest, 1)}.
        </Spoken>
      </figcaption>
    </figure>
  );
}
