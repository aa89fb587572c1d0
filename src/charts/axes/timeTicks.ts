import { type Axis, niceAxis } from "./niceAxis.ts";

const second = 1000;
const minute = 60 * second;
const steps = [
  ...[5, 10, 20, 50, 100, 200, 500],
  ...[1, 2, 5, 10, 15, 20, 30].map((seconds) => seconds * second),
  ...[1, 2, 5, 10, 20, 30, 60].map((minutes) => minutes * minute),
];

/**
 * An axis of lap times: ticks at steps people count in (0.1 s, 0.5 s, 1 s, 15 s, a minute).
 * @param times lap times, ms
 * @param wanted most ticks
 * @returns ticks in ms and the decimals of a second they need: whole and half seconds 1, hundredths 2, thousandths 3
 */
export function timeTicks(times: readonly number[], wanted = 6): Axis {
  return niceAxis(times, steps, wanted, (step) => (step % 100 === 0 ? 1 : step % 10 === 0 ? 2 : 3));
}
