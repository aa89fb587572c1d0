import { aboutRemark, type CalendarDate, remarksNamed, sayShortDate } from "#domain";
import type { AssumedFact } from "#physics";
import type { CornerChange, CornersReport, CornerWorth, WhyCorner } from "#stats";
import { hundredths, sayAmount } from "./amount.ts";
import { straightWords } from "./cornerKind.ts";
import { asSentence, counted, listed, lower } from "./counted.ts";
import { gainTitle } from "./gain.ts";
import { sayGap } from "./gaps.ts";

type Ends = { readonly low: number; readonly high: number };

/**
 * Both ends of a range of seconds that is an estimate, rounded outwards.
 * @example sayRange({ low: 118, high: 461 }) // "between 0.11 and 0.47 s"
 */
export function sayRange(ends: Ends): string {
  const { least, most, isSame, isFromNothing } = rangeOf(ends);
  if (isFromNothing) return `up to ${most}`;
  return isSame ? most : `between ${least} and ${most}`;
}

/** The same beside a bar: "0.11 to 0.47 s", "up to 0.18 s". */
export function sayRangeInShort(ends: Ends): string {
  const { least, most, isSame, isFromNothing } = rangeOf(ends);
  if (isFromNothing) return `up to ${most}`;
  return isSame ? most : `${least} to ${most}`;
}

function rangeOf({ low, high }: Ends) {
  const [least, most] = [Math.floor(low / 10) * 10, Math.ceil(high / 10) * 10];
  return {
    least: hundredths.digits(least),
    most: hundredths.say(most),
    isSame: least === most,
    isFromNothing: least <= 0,
  };
}

/**
 * Which corner to work on first, and what it is worth.
 * @example "Corner 5 first: about 0.28 s a lap"
 */
export function cornersTitle({ corners, order }: Pick<CornersReport, "corners" | "order">): string {
  const first = corners.find(({ number }) => number === order[0]);
  if (first === undefined) return "Which corner first cannot be told yet";
  if (first.worth === undefined || !isWorthTelling(first.worth))
    return `Corner ${first.number} first: most mistakes were there`;
  return `Corner ${first.number} first: ${sayWorth(first)} a lap`;
}

/**
 * The same in one line on other screens. Where the corners together come to more than pace costs, without the seconds, which
 * are then too many.
 * @example "Corner 5 first: about 0.28 s a lap"
 */
export function cornersInShort(
  report: Pick<CornersReport, "corners" | "order" | "unusedMs" | "paceMs">,
): string {
  const [first] = report.order;
  return first !== undefined && isMoreThanPace(report) ? `Corner ${first} first` : cornersTitle(report);
}

/**
 * Corners that may well be worth as much as the first, or more: their range goes beyond what it most likely is.
 * @example "It may as well be corner 8 or 11."
 */
export function sayOthersFirst({
  corners,
  order,
}: Pick<CornersReport, "corners" | "order">): string | undefined {
  const first = corners.find(({ number }) => number === order[0])?.worth;
  if (first === undefined || !isWorthTelling(first)) return undefined;
  const others = corners.filter(
    ({ number, worth }) => number !== order[0] && worth !== undefined && worth.high >= first.mid,
  );
  const numbers = others.map(({ number }) => String(number));
  if (numbers.length === 0) return undefined;
  return `It may as well be corner ${listed(numbers, "or")}: ${numbers.length === 1 ? "its range reaches" : "their ranges reach"} as far.`;
}

/** Said beside the headline where its seconds are too many; undefined where they are not. */
export function sayTooManySeconds(report: Pick<CornersReport, "unusedMs" | "paceMs">): string | undefined {
  return isMoreThanPace(report)
    ? "Less than that is to be gained: all corners together come to more than pace costs."
    : undefined;
}

/** Whether a corner's road left unused, with all others', comes to more than pace costs over the same sessions. */
function isMoreThanPace({ unusedMs, paceMs }: Pick<CornersReport, "unusedMs" | "paceMs">): boolean {
  return unusedMs !== undefined && paceMs !== undefined && unusedMs.mid > 0 && unusedMs.mid > paceMs;
}

/** Whether it comes to a hundredth of a second, the least that is told. */
export function isWorthTelling({ mid }: { readonly mid: number }): boolean {
  return Math.round(mid / 10) > 0;
}

/** "about 0.28 s", without a range "0.12 s": what a corner is worth, as short as it can be said. */
export function sayWorth({ worth }: Pick<CornerWorth, "worth">): string {
  if (worth === undefined) return "not known";
  const size = sayAmount(worth.mid, hundredths);
  return worth.low === worth.high ? size : `about ${size}`;
}

/** What the worth of a corner rests on, and its range. */
export function cornerWorthReading(corner: CornerWorth): string {
  const { unused, mistakes, worth } = corner;
  if (worth === undefined || !isWorthTelling(worth)) return notLookedAt;
  const costs = mistakes.ms !== undefined && mistakes.ms > 0 ? mistakes.ms : undefined;
  const line = unused.known && unused.value.ms.mid > 0 ? unused.value.ms.mid : undefined;
  if (line !== undefined && costs !== undefined)
    return `${asSentence(sayRange(worth))}: road left unused about ${sayAmount(line, hundredths)}, mistakes ${sayAmount(costs, hundredths)}.`;
  if (line !== undefined) return `${asSentence(sayRange(worth))}, an estimate from the road left unused.`;
  return unused.known
    ? "That is what mistakes there have cost; its line gives nothing away that can be told."
    : "That is what mistakes there have cost. Its line has not been looked at in a replay.";
}

const notLookedAt =
  "What they cost a lap cannot be told. Look at the corner in a replay: its line may cost time, too.";

/** One reason to work on a corner: "a long straight follows". */
export function sayWhyCorner(why: WhyCorner, carWidth: number): string {
  switch (why.why) {
    case "straight after":
      return `a ${straightWords[why.after]} follows`;
    case "mistakes":
      return `${why.mistakes} of ${counted(why.laps, "lap")} had ${remarksNamed("mistake")} there`;
    case "largest gap":
      return sayGap(why.at, why.metres, { unit: "cars", carWidth });
    case "sector":
      return `it lies in sector ${why.sector}, which holds most time`;
    case "last of its chain":
      return "it ends a chain of corners, so its speed is carried on";
  }
}

/** The reasons in one sentence: "A long straight follows; 4 of 84 laps had an off, a spin or a contact there." Empty without any. */
export function sayWhyCorners(whys: readonly WhyCorner[], carWidth: number): string {
  if (whys.length === 0) return "";
  return `${asSentence(whys.map((why) => sayWhyCorner(why, carWidth)).join("; "))}.`;
}

/**
 * What became of the road left unused from one review to the next; below zero less is given away.
 * @example "0.14 s a lap less given away at corners 5 and 8 since 13 Sep"
 */
export function cornerChangeTitle(
  { from, ms }: Pick<CornerChange, "from" | "ms">,
  where: string,
  today: CalendarDate,
): string {
  const since = `since ${sayShortDate(from, today)}`;
  const size = `${sayAmount(ms.mid, hundredths)} a lap`;
  if (ms.low <= 0 && ms.high >= 0) return `Road left unused at ${where}: not clearly less or more ${since}`;
  return `${size} ${ms.mid < 0 ? "less" : "more"} given away at ${where} ${since}`;
}

/** Both ends of such a change: "between 0.02 and 0.31 s less". */
export function cornerChangeReading({ ms }: Pick<CornerChange, "ms">): string {
  const { low, high } = ms;
  if (low === 0 && high === 0) return "The same gaps as then.";
  const ends =
    high <= 0
      ? `${sayRange({ low: -high, high: -low })} less`
      : low >= 0
        ? `${sayRange({ low, high })} more`
        : `between ${hundredths.say(Math.ceil(-low / 10) * 10)} less and ${hundredths.say(Math.ceil(high / 10) * 10)} more`;
  return `${asSentence(ends)}, each gap being misjudged by up to a quarter of a car.`;
}

/** Whether the lap times followed the reviews: the one sentence about the level. */
export function lapTimesFollowed(
  { level, to }: Pick<NonNullable<CornersReport["change"]>, "level" | "to">,
  today: CalendarDate,
): string {
  return `Lap times: ${lower(gainTitle(level, { asOf: to, today }))}.`;
}

/**
 * Corners by their numbers, those in a row by the first and the last.
 * @param numbers rising
 * @example sayCorners([5]) // "corner 5"
 * @example sayCorners([5, 6, 7, 11]) // "corners 5 to 7 and 11"
 */
export function sayCorners(numbers: readonly number[]): string {
  const rows: [first: number, last: number][] = [];
  for (const number of numbers) {
    const row = rows.at(-1);
    if (row !== undefined && number === row[1] + 1) row[1] = number;
    else rows.push([number, number]);
  }
  const said = rows.flatMap(([first, last]) => {
    if (last - first >= 2) return [`${first} to ${last}`];
    return first === last ? [String(first)] : [String(first), String(last)];
  });
  return `${numbers.length === 1 ? "corner" : "corners"} ${listed(said)}`;
}

/** What all corners together give away, and whether that is more than there is to be had. */
export function unusedSumSays(report: Pick<CornersReport, "unusedMs" | "paceMs">): string | undefined {
  const { unusedMs, paceMs = 0 } = report;
  if (unusedMs === undefined || unusedMs.mid <= 0) return undefined;
  const sum = `All corners looked at together: about ${sayAmount(unusedMs.mid, hundredths)} a lap of road left unused, ${sayRange(unusedMs)}.`;
  if (!isMoreThanPace(report)) return sum;
  const pace = paceMs > 0 ? `the ${sayAmount(paceMs, hundredths)} that pace costs` : "pace costs";
  return `${sum} That is more than ${pace} in the time account of the same sessions, so the seconds are too many: compare corners by them.`;
}

/** Which corners lie in the sector with most time. */
export function sectorCornersSay({ sector }: Pick<CornersReport, "sector">): string | undefined {
  if (sector === undefined) return undefined;
  const { sector: number, corners } = sector;
  return corners.length === 0
    ? `Sector ${number} holds most time between your usual and your best sectors.`
    : `Sector ${number} holds most time between your usual and your best sectors: ${sayCorners(corners)}.`;
}

/** What can be said while no corner is worth anything: what there is, and what would tell. */
export function noAnswerYet({ corners, reviews }: Pick<CornersReport, "corners" | "reviews">): string {
  if (reviews.length > 0)
    return "Nothing that can be told is given away at the corners looked at, and no mistakes there cost time.";
  const named = corners.some(({ mistakes }) => mistakes.counts.length > 0);
  const why =
    "From the seat every line looks good: half a car’s width missed at a kerb is seen only from outside.";
  return named
    ? `What the mistakes cost needs a session with five pace laps. Look at three corners in a replay: it takes a minute. ${why}`
    : `Look at three corners in a replay: it takes a minute. ${why}`;
}

/** "3 off, 1 spin" */
export function sayCounted(counts: CornerWorth["mistakes"]["counts"]): string {
  return counts.map(({ kind, count }) => `${count} ${aboutRemark(kind).word}`).join(", ");
}

/** A corner of the row for those who do not see its bar: "Corner 5, about 0.28 s a lap, 3 off, 1 spin". */
export function sayCornerInRow(corner: CornerWorth): string {
  const { number, name, worth, mistakes } = corner;
  return [
    name === undefined ? `Corner ${number}` : `Corner ${number} ${name}`,
    worth === undefined || !isWorthTelling(worth) ? "no seconds known" : `${sayWorth(corner)} a lap`,
    ...(mistakes.counts.length === 0 ? [] : [sayCounted(mistakes.counts)]),
  ].join(", ");
}

/** What became of one corner, behind its bar: "0.12 s less of road left unused since 13 Sep". */
export function cornerChangeInShort({ from, ms }: CornerChange, today: CalendarDate): string {
  const since = `since ${sayShortDate(from, today)}`;
  if (ms.low <= 0 && ms.high >= 0) return `road left unused not clearly less or more ${since}`;
  return `${sayAmount(ms.mid, hundredths)} ${ms.mid < 0 ? "less" : "more"} of road left unused ${since}`;
}

/** Facts of which a corner's shape and what follows it are made; the others are the car's. */
const shape: readonly AssumedFact[] = ["bend", "radius", "width", "angle", "after"];

/**
 * Which corners rest on assumptions, and whether the car does; undefined where no corner was looked at, or all is known.
 * @example "Assumed in part: the shape of corners 5 and 8, and the car’s grip. The ranges hold what is plausible; each corner says how far it hangs on that."
 */
export function assumedCornersSay({ corners }: Pick<CornersReport, "corners">): string | undefined {
  const looked = corners.flatMap(({ number, unused }) =>
    unused.known ? [{ number, assumed: unused.value.assumed }] : [],
  );
  const shapes = looked.filter(({ assumed }) => assumed.some((fact) => shape.includes(fact)));
  const parts = [
    ...(shapes.length > 0 ? [`the shape of ${sayCorners(shapes.map(({ number }) => number))}`] : []),
    ...(looked.some(({ assumed }) => assumed.includes("grip")) ? ["the car’s grip"] : []),
  ];
  if (parts.length === 0) return undefined;
  return `Assumed in part: ${listed(parts)}. The ranges hold what is plausible; each corner says how far it hangs on that.`;
}
