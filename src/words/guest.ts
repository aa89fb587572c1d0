import { counted } from "./counted.ts";

/**
 * Laps of guests, which no count of the driver's own laps holds; empty without any.
 * @example "5 laps of guests beside them"
 */
export function sayGuestLaps(laps: number): string {
  return laps === 0 ? "" : `${counted(laps, "lap")} of guests beside them`;
}

/** Who drove in the driver's place: "Ada driving", or "someone else driving" where no name is known. */
export function sayGuest(name: string): string {
  return name === "" ? "someone else driving" : `${name} driving`;
}

/** What is said of a run that somebody else drove, wherever a sentence about the run would stand. */
export const guestRun = "Someone else drove: this run counts in no figure of yours.";
