const wobble = [120, -150, 40, -90, 180, -60, 10, -130, 90, 70];

/** Sessions of 20 laps with these medians, ms. */
export const sessionsOf = (medians: readonly number[], laps = 20) =>
  medians.map((medianMs, i) => ({ lapsBefore: laps * i, laps, medianMs }));

/** Medians about 1:30 that lead nowhere: a spread of about 110 ms. */
export const flat = (count: number) =>
  Array.from({ length: count }, (_, i) => 90_000 + (wobble[i % wobble.length] ?? 0));

/** The same, four seconds slower at first, of which every five sessions take half. */
export const falling = (count: number) => flat(count).map((ms, i) => ms + 4000 * 2 ** (-i / 5));
