import type { CalendarDate, Target } from "#domain";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { figureForTarget } from "./figureForTarget.ts";

/**
 * The target to come next: not archived, not reached, its date not gone by; the nearest date first, without a date
 * last.
 * @param targets of one combo, set on its present page
 * @param digests of that page
 */
export function nextTarget(
  targets: readonly Target[],
  digests: readonly SessionDigest[],
  today: CalendarDate,
): Target | undefined {
  const day = ({ by = "9999-12-31" }: Target) => by;
  return targets
    .filter((target) => target.archivedAt === undefined && day(target) >= today)
    .toSorted((a, b) => (day(a) < day(b) ? -1 : day(a) > day(b) ? 1 : a.setAt - b.setAt))
    .find((target) => !isTargetReached(target, digests));
}

/** Whether the figure of the page stands at the target or beyond it; false where there is none yet. */
export function isTargetReached(
  target: Pick<Target, "kind" | "laps" | "value">,
  digests: readonly SessionDigest[],
): boolean {
  const now = figureForTarget(target, digests);
  if (now === undefined) return false;
  return target.kind === "cleanShare" ? now >= target.value : now <= target.value;
}
