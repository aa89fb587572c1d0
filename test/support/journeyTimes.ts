/** Plain arithmetic on lap times as typed, apart from the app's own: what a journey expects to read. */

/** "1:26.300" → 86300; a time in tenths counts as its first instant. */
export function msOf(time: string): number {
  const [minutes = "0", seconds = "0"] = time.split(":");
  const [whole = "0", part = ""] = seconds.split(".");
  return Number(minutes) * 60_000 + Number(whole) * 1000 + Number(part.padEnd(3, "0"));
}

/** 86300 → "1:26.300", rounded to the millisecond. */
export function timeOf(ms: number): string {
  const whole = Math.round(ms);
  const seconds = String(Math.floor((whole % 60_000) / 1000)).padStart(2, "0");
  return `${Math.floor(whole / 60_000)}:${seconds}.${String(whole % 1000).padStart(3, "0")}`;
}

/** The fastest of some lap times. */
export const bestOf = (times: readonly string[]) => timeOf(Math.min(...times.map(msOf)));

/** The middle one of some lap times, or half way between the middle two. */
export function usualOf(times: readonly string[]): string {
  const sorted = times.map(msOf).sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  const lower = sorted[Math.floor((sorted.length - 1) / 2)] ?? Number.NaN;
  return timeOf((lower + upper) / 2);
}
