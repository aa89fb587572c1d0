/** A seed for the order of a test, from the browser's own source of chance: a whole number of 32 bits. */
export function drawSeed(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;
}
