import type { ComboReview, SittingThirds } from "#stats";
import { hundredths } from "./amount.ts";
import { counted } from "./counted.ts";
import { sayTooFew } from "./reason.ts";
import { isClear, isSame, pace, sayBetween, sayClear, sayNotClear } from "./shift.ts";

type Reviewed = Pick<ComboReview, "thirds">;

/**
 * Whether laps late in a sitting differ from early ones.
 * @example "Late laps slower by 0.24 s, very likely at least 0.05 s"
 * @example "Late laps not clearly faster or slower"
 */
export function thirdsTitle({ thirds }: Reviewed): string {
  if (!thirds.known) return sayTooFew(thirds.reason);
  if (isSame(thirds.value)) return "No difference late in a session";
  return isClear(thirds.value)
    ? `Late laps ${sayClear(thirds.value, hundredths, pace)}`
    : `Late laps ${sayNotClear(pace)}`;
}

/** How it is compared, and what it cannot tell. */
export function thirdsReading({ thirds }: Reviewed): string {
  if (!thirds.known)
    return "The last third of a session's pace laps is compared with its first, session by session.";
  const { sessions, sessionsLeftOut } = thirds.value;
  const left =
    sessionsLeftOut > 0
      ? `; ${counted(sessionsLeftOut, "session")} with fewer than 12 pace laps left out`
      : "";
  return `Last third against first third of ${counted(sessions, "session")}, without the first 3 laps${left}.${meaning(thirds.value)}`;
}

function meaning({ low, high }: SittingThirds): string {
  if (isSame({ low, high })) return "";
  if (low > 0) return " Tired driver or worn tyres: these figures cannot tell which.";
  if (high < 0) return " Learning within the evening, or a lighter car: these figures cannot tell which.";
  return ` It may be chance: ${sayBetween({ low, high }, hundredths, pace)}.`;
}
