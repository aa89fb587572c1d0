import { type Figure, known } from "#domain";
import { apexTimes, type Corner } from "#physics";

/** Places of the apex of one corner, by what is lost at them. */
export interface ApexPlaces {
  /** Seconds lost against the best place, by percent of the turn. */
  readonly points: readonly { readonly percent: number; readonly lost: number }[];
  /** Percent of the turn, and the same in degrees. */
  readonly best: number;
  readonly apexAngle: number;
  /** What an apex in the middle loses against the best one, ms. */
  readonly lost: number;
}

/** Where the apex of a corner is best, and what the others lose; a reason where no line fits. */
export function apexPlaces(corner: Corner): Figure<ApexPlaces> {
  const times = apexTimes(corner);
  if (!times.known) return times;
  const { points, best } = times.value;
  const percentOf = (apexAngle: number) => Math.round((100 * apexAngle) / corner.angle);
  const middle = points.find(({ apexAngle }) => percentOf(apexAngle) === 50);
  return known({
    points: points.map(({ apexAngle, seconds }) => ({
      percent: percentOf(apexAngle),
      lost: seconds - best.seconds,
    })),
    best: percentOf(best.apexAngle),
    apexAngle: best.apexAngle,
    lost: middle ? (middle.seconds - best.seconds) * 1000 : 0,
  });
}
