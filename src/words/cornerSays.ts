import type { CornerHabits, CornerWorth, UnusedRoad } from "#stats";
import { hundredths, sayAmount } from "./amount.ts";
import { shareEnds } from "./cleanShare.ts";
import { placeWords, sayCounted, sayRange } from "./cornersSay.ts";
import { asSentence, counted } from "./counted.ts";
import { sayGapAt } from "./gap.ts";
import { sayTooFew } from "./reason.ts";

/**
 * What stands first on the page of one corner.
 * @example "About 0.20 s a lap given away by road left unused"
 */
export function cornerTitle({ unused, mistakes }: Pick<CornerWorth, "unused" | "mistakes">): string {
  if (unused.known) {
    if (unused.value.ms.mid > 0)
      return `About ${sayAmount(unused.value.ms.mid, hundredths)} a lap given away by road left unused`;
    return unused.value.nothingToGain && hasGap(unused.value)
      ? "Nothing to gain from a wider line here"
      : "All of the road is used here";
  }
  if (mistakes.ms !== undefined && mistakes.ms > 0)
    return `Mistakes here cost ${sayAmount(mistakes.ms, hundredths)} a lap`;
  return isMissing(unused) ? "What its line gives away is not known yet" : sayTooFew(unused.reason);
}

const isMissing = (unused: Extract<CornerWorth["unused"], { readonly known: false }>) =>
  "because" in unused.reason && unused.reason.because === "corner not looked at";

const hasGap = ({ gaps }: UnusedRoad) => Object.values(gaps).some((metres) => metres > 0);

/** The gaps as they were seen, and what they come to. */
export function cornerReading({ unused }: Pick<CornerWorth, "unused">, carWidth: number): string {
  if (!unused.known)
    return isMissing(unused)
      ? "Look at it in a replay from outside the car: how much road is left at the entry, at the apex and at the exit."
      : "Put its measures right in the layout.";
  const { gaps, ms, nothingToGain } = unused.value;
  const seen = (["entry", "apex", "exit"] as const).flatMap((at) => {
    const metres = gaps[at];
    return metres === undefined ? [] : [`${sayGapAt(metres, carWidth)} ${placeWords[at]}`];
  });
  const gapsSaid = `${asSentence(seen.join(", "))}.`;
  if (ms.mid > 0) return `${gapsSaid} It costs ${sayRange(ms)}, the straight after it included.`;
  return nothingToGain && hasGap(unused.value)
    ? `${gapsSaid} The shorter way round is as fast: there is no straight to carry the speed along.`
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
  return ms > 0
    ? `${part} They cost ${sayAmount(ms, hundredths)} a lap.`
    : `${part} They cost nothing that can be told.`;
}

const brakingWords = { early: "braking early", right: "braking right", late: "braking late" } as const;
const throttleWords = {
  early: "throttle early",
  right: "throttle right",
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
