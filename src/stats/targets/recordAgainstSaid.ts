import { type CalendarDate, type Figure, type Id, known, unknown } from "#domain";

/** A forecast that was scored. */
export interface RecordedForecast {
  readonly targetId: Id;
  readonly madeOn: CalendarDate;
  readonly by: CalendarDate;
  readonly chance: number;
  readonly reached: boolean;
}

/** Whether the record can be squared with what was said. */
export interface RecordAgainstSaid {
  /** Targets, each with its date, that were told a chance and scored. */
  readonly targets: number;
  readonly reached: number;
  /** How many were to be expected. */
  readonly expected: number;
  /** `no`: the chances may be right · more or fewer were reached than chance lets happen one time in twenty. */
  readonly contradicts: "no" | "too hopeful" | "too cautious";
}

const LEAST_TARGETS = 5;
const SELDOM = 0.05;

/**
 * Whether the record contradicts the chances that were given. Forecasts of one target hang together, so each target with its
 * date counts once, by the first that was said of it. Exact: the number that is reached has a Poisson binomial distribution if
 * the chances are right (Wang 1993, "On the number of successes in independent trials"; title from memory).
 * @returns a reason with fewer than five targets
 */
export function recordAgainstSaid(forecasts: readonly RecordedForecast[]): Figure<RecordAgainstSaid> {
  const first = new Map<string, RecordedForecast>();
  for (const forecast of forecasts.toSorted((a, b) =>
    a.madeOn < b.madeOn ? -1 : a.madeOn > b.madeOn ? 1 : 0,
  )) {
    const key = `${forecast.targetId} ${forecast.by}`;
    if (!first.has(key)) first.set(key, forecast);
  }
  const said = [...first.values()];
  if (said.length < LEAST_TARGETS)
    return unknown({ needs: LEAST_TARGETS, of: "target that came due", has: said.length });
  const reached = said.filter((forecast) => forecast.reached).length;
  const chances = numberReached(said.map(({ chance }) => chance));
  const sum = (from: number, to: number) =>
    chances.slice(from, to).reduce((total, share) => total + share, 0);
  const contradicts =
    sum(0, reached + 1) < SELDOM
      ? "too hopeful"
      : sum(reached, chances.length) < SELDOM
        ? "too cautious"
        : "no";
  return known({
    targets: said.length,
    reached,
    expected: said.reduce((total, { chance }) => total + chance, 0),
    contradicts,
  });
}

/** The chance of each number of successes, from none to all, in independent trials with chances of their own. */
export function numberReached(chances: readonly number[]): number[] {
  let shares = [1];
  for (const chance of chances)
    shares = [...shares, 0].map(
      (share, count) => share * (1 - chance) + (count > 0 ? (shares[count - 1] ?? 0) * chance : 0),
    );
  return shares;
}
