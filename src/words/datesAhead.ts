import { practiceDay, sayDate } from "#domain";

/**
 * Entries dated after today: only the driver can say whether a clock stood ahead when they were made, or this device's is
 * behind. `today` is what the driver says by pressing.
 */
export function sayDatesAhead(
  newest: number,
  now: number,
  zone: string,
): { readonly text: string; readonly today: string } {
  const dayOf = (at: number) => sayDate(practiceDay(at, zone, 0));
  const today = dayOf(now);
  return {
    today: `Today is ${today}`,
    text: `Entries of this logbook are dated as late as ${dayOf(newest)}, because a clock stood ahead when they were made. Until they are put right, they count as newer than what you change on another device.`,
  };
}
