/** A key that bounces, or a finger that taps twice, is one Enter: a second one that is asked for comes later than this. */
const separateMs = 250;

/** Whether a press is another one than the press that was asked about, by the time stamps of both events, ms. */
export function isSeparate(at: number, askedAt: number): boolean {
  return Math.abs(at - askedAt) >= separateMs;
}
