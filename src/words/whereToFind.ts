import type { WhereToFind } from "#stats";
import { hundredths, thousandths } from "./amount.ts";
import { listed } from "./counted.ts";
import { sayTooFew } from "./reason.ts";

/**
 * Where most of the time that a target still needs could come from, as short as a folded question answers it.
 * @example "most in sector 2: 0.250 s"
 */
export function whereInShort({ sectors, corners }: Pick<WhereToFind, "sectors" | "corners">): string {
  const [first] = corners;
  if (sectors.known) {
    const { shares } = sectors.value;
    const most = Math.max(...shares);
    return `most in sector ${shares.indexOf(most) + 1}: ${thousandths.say(most)}`;
  }
  return first === undefined
    ? "cannot be told yet"
    : `most at corner ${first.number}: about ${hundredths.say(first.ms)}`;
}

/**
 * What the sectors say of it, or what is missing.
 * @example "0.444 s to go, shared as far as your usual sectors lie behind your best ones."
 */
export function saySectorShares({ gain, sectors }: Pick<WhereToFind, "gain" | "sectors">): string {
  if (!sectors.known) return `By sector: ${sayTooFew(sectors.reason)}.`;
  const { covered } = sectors.value;
  const start = `${thousandths.say(gain)} to go`;
  if (covered >= gain) return `${start}, shared as far as your usual sectors lie behind your best ones.`;
  const beyond = `shared by how long the sectors are`;
  return covered === 0
    ? `${start}, ${beyond}: your usual sectors are your best ones.`
    : `${start}. Your best sectors hold ${thousandths.say(covered)} of it; the rest is ${beyond}.`;
}

/**
 * Which corners could give it, by the road that a replay showed unused there: an estimate.
 * @returns undefined where no replay showed any
 * @example "Road left unused could give it: about 0.31 s at corner 5 and 0.20 s at corner 3, an estimate."
 */
export function sayCornersThatGive({
  gain,
  corners,
}: Pick<WhereToFind, "gain" | "corners">): string | undefined {
  if (corners.length === 0) return undefined;
  const sum = corners.reduce((total, { ms }) => total + ms, 0);
  const each = listed(corners.map(({ number, ms }) => `${hundredths.say(ms)} at corner ${number}`));
  const so = sum >= gain ? "could give it" : "could give some of it";
  return `Road left unused ${so}: about ${each}, an estimate.`;
}
