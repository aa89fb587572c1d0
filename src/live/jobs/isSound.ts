/** Whether every number in something that was kept can be shown: the browser may hold anything. */
export function isSound(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object" || value === null) return value !== null;
  return Object.values(value).every(isSound);
}
