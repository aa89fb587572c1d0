import { counted } from "./counted.ts";

/**
 * How much a search found, and how much of it is shown.
 * @example sayFound(3, 1840, 100) // "3 sessions and 1840 laps found. The newest 100 laps are shown."
 */
export function sayFound(sessions: number, laps: number, most: number): string {
  if (sessions === 0 && laps === 0) return "Nothing found.";
  const parts = [
    ...(sessions > 0 ? [counted(sessions, "session")] : []),
    ...(laps > 0 ? [counted(laps, "lap")] : []),
  ];
  const cut = [...(sessions > most ? ["sessions"] : []), ...(laps > most ? ["laps"] : [])];
  const shown =
    cut.length === 0
      ? ""
      : ` The newest ${most} ${cut.join(" and ")} are shown: narrow the search for others.`;
  return `${parts.join(" and ")} found.${shown}`;
}
