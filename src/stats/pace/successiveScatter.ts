import { type Numbers, requireFinite } from "#numbers";

/**
 * Scatter: the square root of half the mean squared difference of successive laps, within runs only (von Neumann
 * 1941, "Distribution of the ratio of the mean square successive difference to the variance"). A steady drift hardly
 * moves it, so it separates "uneven" from "getting faster".
 * @param runs lap times of each run in order, ms
 * @returns in ms; undefined where no run has two laps
 * @throws RangeError for a value that is not finite
 * @example successiveScatter([[84000, 84200, 84000]]) // 141.42…
 */
export function successiveScatter(runs: readonly Numbers[]): number | undefined {
  let squares = 0;
  let differences = 0;
  runs.forEach((run, index) => {
    requireFinite(run, `runs[${index}]`);
    for (let i = 1; i < run.length; i++) {
      squares += ((run[i] as number) - (run[i - 1] as number)) ** 2;
      differences++;
    }
  });
  return differences === 0 ? undefined : Math.sqrt(squares / differences / 2);
}
