import type { CalendarDate, Id } from "#domain";
import { useDevice } from "#state/device.ts";

/** The corners chosen for tonight, kept on the device; with the practice day they are forgotten. */
export interface CornersTonight {
  /** In lap order; undefined where none were chosen today with this combo. */
  readonly numbers: readonly number[] | undefined;
  readonly choose: (numbers: readonly number[]) => void;
}

/** @param today the practice day */
export function useCornersTonight(comboId: Id, today: CalendarDate): CornersTonight {
  const held = useDevice(({ cornersTonight }) => cornersTonight);
  const change = useDevice((device) => device.change);
  const isOfNow = held?.comboId === comboId && held.day === today && held.numbers.length > 0;
  return {
    numbers: isOfNow ? held.numbers : undefined,
    choose: (numbers) => change({ cornersTonight: { comboId, day: today, numbers } }),
  };
}
