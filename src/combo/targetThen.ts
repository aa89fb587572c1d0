import type { Target } from "#domain";

/** What was wanted at an instant, epoch ms: a target as it was before it was changed since. */
export function targetThen(target: Target, at: number): Target {
  const was = target.earlier?.find(({ until }) => until > at);
  if (was === undefined) return target;
  const { laps: _, by: __, ...rest } = target;
  const { until: ___, untilDay: ____, ...wanted } = was;
  return { ...rest, ...wanted };
}
