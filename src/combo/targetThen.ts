import type { CalendarDate, EarlierTarget, Target } from "#domain";

/** What was wanted at an instant, epoch ms: a target as it was before it was changed since. */
export function targetThen(target: Target, at: number): Target {
  return asItWas(
    target,
    target.earlier?.find(({ until }) => until > at),
  );
}

/** What was wanted at the end of a day: a target as it was before it was changed on a later one. */
export function targetOnDay(target: Target, day: CalendarDate): Target {
  return asItWas(
    target,
    target.earlier?.find(({ untilDay }) => untilDay > day),
  );
}

/** The figure at its setting is that of the figure it is about now: for another one it says nothing. */
function asItWas(target: Target, was: EarlierTarget | undefined): Target {
  if (was === undefined) return target;
  const { laps, by: _, start, ...rest } = target;
  const { until: __, untilDay: ___, ...wanted } = was;
  const isSameFigure = was.kind === target.kind && was.laps === laps;
  return { ...rest, ...wanted, ...(isSameFigure && start !== undefined && { start }) };
}
