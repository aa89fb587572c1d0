import { canonicalText, type Stamped, stampsKeptSince } from "#domain";

/** How far a stamp may lie ahead of a clock that is right: those of two devices differ a little. */
const toleranceMs = 86_400_000;

/** The latest stamp that is believed under a clock that shows `now`. */
export const believedUpTo = (now: number) => now + toleranceMs;

/** Fields of a row by which versions are told apart and that say nothing to the driver. */
export const versionFields: ReadonlySet<string> = new Set([
  "id",
  "createdAt",
  "updatedAt",
  "had",
  "disproved",
]);

/**
 * Which of two versions of one row or lap stays, and what it takes along. A version that is among the stamps the other had
 * was seen by whoever wrote that one, and goes, whatever the clocks said. Else the later stamp stays; at a tie one that
 * was never put right, then the one whose false stamp was the later, then the deleted one, then the greater canonical
 * text. Neither order nor repetition matters. Pure; no clock decides.
 */
export function stays<R extends Stamped>(a: R, b: R): R {
  const [first, second] = isAfter(a, b) ? [a, b] : [b, a];
  return knowing(first, second);
}

function isAfter(a: Stamped, b: Stamped): boolean {
  const [hasSeenB, hasSeenA] = [hasSeen(a, b), hasSeen(b, a)];
  if (hasSeenB !== hasSeenA) return hasSeenB;
  if (a.updatedAt !== b.updatedAt) return a.updatedAt > b.updatedAt;
  const [falseOfA, falseOfB] = [falseStamp(a), falseStamp(b)];
  if (falseOfA !== falseOfB) return falseOfA === 0 || (falseOfB !== 0 && falseOfA > falseOfB);
  const [isADeleted, isBDeleted] = [a.deletedAt !== undefined, b.deletedAt !== undefined];
  if (isADeleted !== isBDeleted) return isADeleted;
  return canonicalText({ ...a, disproved: undefined }) > canonicalText({ ...b, disproved: undefined });
}

/** Whether one version is known to be overtaken by the other: its writer had it before them, or its stamp is disproved. */
export const hasSeen = ({ had = [], disproved = [] }: Stamped, { updatedAt }: Stamped) =>
  had.includes(updatedAt) || disproved.includes(updatedAt);

/** The stamp a version was given by a clock that stood ahead, where it has been put right; else 0. */
const falseStamp = ({ updatedAt, had = [] }: Stamped) =>
  Math.max(0, ...had.filter((stamp) => stamp > updatedAt));

/** The version that stays, knowing every false stamp under which the other one would come again and beat it. */
function knowing<R extends Stamped>(row: R, { had = [], disproved = [] }: R): R {
  const { disproved: known = [], had: own = [], updatedAt } = row;
  const fresh = [...had, ...disproved].filter(
    (stamp) => stamp > updatedAt && !known.includes(stamp) && !own.includes(stamp),
  );
  return fresh.length === 0 ? row : { ...row, disproved: withStamps(known, fresh) };
}

/** Stamps, with some more, ascending. */
export const withStamps = (stamps: readonly number[], more: readonly number[]) =>
  [...new Set([...stamps, ...more])].sort((a, b) => a - b);

/** Whether a row or lap was stamped by a clock ahead of an instant. */
export function isAhead({ updatedAt, deletedAt = 0 }: Stamped, upTo: number): boolean {
  return Math.max(updatedAt, deletedAt) > upTo;
}

/**
 * A row or lap whose stamp lies ahead of the clock, stamped just behind the newest stamp it had that does not, and
 * remembering the false one. So it still stays against all its writer had seen, and goes against what was written
 * elsewhere since. Every device puts it right in the same way. Others are given as they are.
 * @param upTo instants later than this are not believed
 */
export function putRight<R extends Stamped>(row: R, upTo: number): R {
  if (!isAhead(row, upTo)) return row;
  const { createdAt, updatedAt, deletedAt, had = [] } = row;
  const born = createdAt <= upTo ? createdAt : stampsKeptSince;
  const newestBelieved = Math.max(born, ...had.filter((stamp) => stamp <= upTo));
  const right =
    updatedAt <= upTo ? row : { ...row, updatedAt: newestBelieved + 1, had: withStamps(had, [updatedAt]) };
  return deletedAt === undefined ? right : { ...right, deletedAt: Math.min(deletedAt, right.updatedAt) };
}

/** The instant of a deletion as the clock said it then, also where that has been put right; undefined without one. */
export function deletionAsSaid({ deletedAt, updatedAt, had = [] }: Stamped): number | undefined {
  return deletedAt === undefined
    ? undefined
    : Math.max(deletedAt, ...had.filter((stamp) => stamp > updatedAt));
}
