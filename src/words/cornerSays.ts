import { gapPlaces } from "#domain";
import type { CornerHabits, CornerWorth, UnusedRoad } from "#stats";
import { hundredths, sayAmount } from "./amount.ts";
import { shareEnds } from "./cleanShare.ts";
import { isWorthTelling, sayCounted, sayRange, sayWorth } from "./cornersSay.ts";
import { asSentence, counted } from "./counted.ts";
import { sayGap } from "./gaps.ts";
import { sayTooFew } from "./reason.ts";

/**
 * What stands first on the page of one corner: what the answer says of it, and of what that is made.
 * @example "About 0.24 s a lap: road left unused 0.09 s, mistakes 0.15 s"
 */
export function cornerTitle(corner: Pick<CornerWorth, "unused" | "mistakes" | "worth">): string {
  const { unused, mistakes, worth } = corner;
  if (worth !== undefined && isWorthTelling(worth)) {
    const road = unused.known && isWorthTelling(unused.value.ms) ? unused.value.ms.mid : undefined;
    const costs = mistakes.ms !== undefined && isWorthTelling({ mid: mistakes.ms }) ? mistakes.ms : undefined;
    const parts = [
      road !== undefined && `road left unused ${sayAmount(road, hundredths)}`,
      costs !== undefined && `mistakes ${sayAmount(costs, hundredths)}`,
    ].filter((part) => part !== false);
    if (parts.length === 2) return `${asSentence(sayWorth(corner))} a lap: ${parts.join(", ")}`;
    return `${asSentence(sayWorth(corner))} a lap given away by ${road === undefined ? "mistakes" : "road left unused"}`;
  }
  if (!unused.known)
    return isMissing(unused) ? "What its line gives away is not known yet" : sayTooFew(unused.reason);
  if (isWorthTelling({ mid: unused.value.ms.high }))
    return "Whether a wider line would gain here cannot be told";
  return hasGap(unused.value) ? "Nothing to gain from a wider line here" : "All of the road is used here";
}

const isMissing = (unused: Extract<CornerWorth["unused"], { readonly known: false }>) =>
  "because" in unused.reason && unused.reason.because === "not seen in a replay";

const hasGap = ({ gaps }: UnusedRoad) => Object.values(gaps).some((metres) => metres > 0);

/** The gaps as they were seen, and what they come to. */
export function cornerReading({ unused }: Pick<CornerWorth, "unused">, carWidth: number): string {
  if (!unused.known)
    return isMissing(unused)
      ? "Look at it in a replay from outside the car: how much road is left at the entry, at the apex and at the exit."
      : "Correct its measures in the layout, or the gaps in the review.";
  const { gaps, ms, nothingToGain } = unused.value;
  const seen = gapPlaces.flatMap((place) => {
    const metres = gaps[place];
    return metres === undefined ? [] : [sayGap(place, metres, { unit: "cars", carWidth })];
  });
  const gapsSaid = `${asSentence(seen.join(", "))}.`;
  if (isWorthTelling({ mid: ms.high }))
    return `${gapsSaid} It costs ${sayRange(ms)}, the straight after it included.`;
  return nothingToGain && hasGap(unused.value)
    ? `${gapsSaid} The shorter way round is as fast here.`
    : gapsSaid;
}

/** "3 off, 1 spin in 120 laps: 3 % of laps, between 1 and 8 %. They cost 0.08 s a lap." */
export function cornerMistakesSay(
  { counts, laps, mistakes, share, ms }: CornerWorth["mistakes"],
  sessions: number,
): string {
  const looked = `${counted(laps, "lap")} of ${sessions === 1 ? "one session" : `the last ${sessions} sessions`}`;
  if (counts.length === 0)
    return laps === 0 ? "No laps to look at yet." : `No mistake noted here in ${looked}.`;
  const noted = `${asSentence(sayCounted(counts))} in ${looked}`;
  if (mistakes === 0 || share === undefined) return `${noted}.`;
  const [low, high] = shareEnds(share);
  const part = `${noted}: ${Math.round(share.share * 100)} % of laps had a mistake here, between ${low} and ${high} %.`;
  if (ms === undefined) return `${part} What they cost needs a session with five pace laps.`;
  return isWorthTelling({ mid: ms })
    ? `${part} They cost ${sayAmount(ms, hundredths)} a lap.`
    : `${part} What they cost does not show in the lap times.`;
}

const brakingWords = {
  early: "braking early",
  right: "braking in the right place",
  late: "braking late",
} as const;
const throttleWords = {
  early: "throttle early",
  right: "throttle at the right time",
  late: "throttle late",
  twice: "throttle twice",
} as const;

/** What reviews said of pedals and line: "Braking late in 2 of 3 reviews, off line in 1." Undefined without any. */
export function cornerHabitsSay({ reviews, braking, throttle, offLine }: CornerHabits): string | undefined {
  const all = [
    ...braking.map(({ what, count }) => ({ word: brakingWords[what], count })),
    ...throttle.map(({ what, count }) => ({ word: throttleWords[what], count })),
    ...(offLine > 0 ? [{ word: "off line", count: offLine }] : []),
  ];
  const [first, ...rest] = all;
  if (first === undefined) return undefined;
  const others = rest.map(({ word, count }) => `, ${word} in ${count}`).join("");
  return `${asSentence(first.word)} in ${first.count} of ${counted(reviews, "review")}${others}.`;
}

/** Places of the apex around the middle that are called so, percent of the turn. */
const MIDDLE = 5;

/**
 * Where the apex of a corner is best, as a finding.
 * @param best percent of the turn at which the apex is best
 * @param lost what an apex in the middle loses against it, ms
 * @example apexTitle({ best: 62, lost: 41 }) // "A late apex is best: 0.04 s faster than one in the middle"
 */
export function apexTitle({ best, lost }: { readonly best: number; readonly lost: number }): string {
  if (lost < 5 || Math.abs(best - 50) <= MIDDLE) return "An apex in the middle is as good as any";
  const place = best > 50 ? "A late apex" : "An early apex";
  return `${place} is best: ${sayAmount(lost, hundredths)} faster than one in the middle`;
}

interface ApexReading {
  readonly best: number;
  /** The straight after it, m. */
  readonly straight: number;
  /** What the widest line loses against the shorter way, ms; below 0 it is the faster one. */
  readonly shorterWayMs: number;
}

/** Why the apex is best there: slow in, fast out, or the shorter way. */
export function apexReading({ best, straight, shorterWayMs }: ApexReading): string {
  const where = `Best after ${Math.round(best)} % of the turn, with ${Math.round(straight)} m of straight after it.`;
  if (shorterWayMs > 0)
    return `${where} The shorter way round wins here, by ${sayAmount(shorterWayMs, hundredths)}: there is too little straight to use the speed of a wide exit.`;
  return best > 50 + MIDDLE
    ? `${where} Slow in, fast out: what is lost before the apex comes back along the straight.`
    : where;
}

/** The radii of a line's two arcs: "61 m, then 55 m", where both are the same "71 m". */
export function sayRadii(entry: number, exit: number): string {
  const [first, second] = [entry.toFixed(0), exit.toFixed(0)];
  return first === second ? `${first} m` : `${first} m, then ${second} m`;
}

interface FromAboveFacts {
  readonly direction: "left" | "right";
  /** Degrees. */
  readonly angle: number;
  /** Radius of the widest line, m. */
  readonly widest: number;
  /** Radii of the line as driven. */
  readonly driven: string | undefined;
}

/** What the drawing of a corner shows, for those who do not see it. */
export function sayFromAbove({ direction, angle, widest, driven }: FromAboveFacts): string {
  const road = `The corner from above, turning ${direction} through ${angle.toFixed(0)}°`;
  const wide = `the widest line an arc of ${sayRadii(widest, widest)}`;
  return driven === undefined ? `${road}: ${wide}.` : `${road}: as driven arcs of ${driven}; ${wide}.`;
}
