import { median, medianOfSorted } from "#numbers";
import type { EntryContext } from "./context.ts";
import { fewestForUsual } from "./grounds.ts";
import type { KnownTimes } from "./knownTimes.ts";
import { tensReachMs } from "./shortForm.ts";

type Around = Pick<EntryContext, "known" | "pbMs" | "isPbUsual" | "surfaceMs">;

/** So many last laps of a run say what is usual in it now: a track dries, tyres wear. */
const lastLaps = 5;

/**
 * The usual lap that short forms are completed from, ms: the median of the run's last laps, from three on; else of the
 * session's laps like these; else of the page's; else the PB, where it says what is usual; else of the laps of other
 * kinds on this surface. Undefined where none is known.
 */
export function usualLap({ last, pace }: Pick<KnownTimes, "last" | "pace">, around: Around) {
  const { known, pbMs, isPbUsual = true, surfaceMs } = around;
  const ofRun = last.length < fewestForUsual ? undefined : median(last.slice(-lastLaps));
  return (
    ofRun ??
    medianOfSorted(pace) ??
    medianOfSorted(known?.page ?? []) ??
    (isPbUsual ? pbMs : undefined) ??
    surfaceMs
  );
}

/**
 * Whether the usual is too little to say which ten seconds are meant: it rests on one or two laps of this session that
 * no older PB bears out, so that one slow lap without a remark would draw all laps after it ten seconds too far; or on
 * laps of other kinds alone.
 */
export function isUsualUnsure(
  { pace }: Pick<KnownTimes, "pace">,
  { usualMs, ...around }: Around & Pick<EntryContext, "usualMs">,
): boolean {
  const { known, pbMs, isPbUsual = true, surfaceMs } = around;
  const [first] = pace;
  if (usualMs === undefined || pace.length >= fewestForUsual) return false;
  const bearing = isPbUsual ? pbMs : undefined;
  if (first === undefined)
    return surfaceMs !== undefined && bearing === undefined && (known?.page ?? []).length === 0;
  return bearing === undefined || bearing === first || Math.abs(usualMs - bearing) > tensReachMs;
}
