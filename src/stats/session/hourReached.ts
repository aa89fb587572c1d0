import { lapsInOrder, type Run } from "#domain";

const hour = 3_600_000;

/**
 * Full hours at the wheel that a session's last run has brought: once each, so that a break is asked for once an hour.
 * @param runs the driver's own runs of the session, the last one last
 * @returns undefined where that run brought no full hour
 */
export function hourReached(runs: readonly Run[]): number | undefined {
  const before = Math.floor(drivenMs(runs.slice(0, -1)) / hour);
  const now = Math.floor(drivenMs(runs) / hour);
  return now > before ? now : undefined;
}

function drivenMs(runs: readonly Run[]): number {
  return runs.reduce(
    (sum, run) =>
      run.guest === undefined ? lapsInOrder(run).reduce((all, { ms = 0 }) => all + ms, sum) : sum,
    0,
  );
}
