import { type DigestMaker, fastestSession, type ReadOnlyLogbook, readDigests, type Span } from "#db";
import { type Id, latestMs } from "#domain";
import { type BestCandidate, datedBests, mayTakeBest, type SessionDigest } from "#stats";
import { fastestCandidate } from "./digestMaker.ts";

interface Asked {
  readonly comboId: Id;
  readonly span: Span;
  /** A session that is not asked about: the one being driven. */
  readonly except?: Id;
  /** The page has a personal best from before the span, so that laps of warm-ups and drills count in it. */
  readonly isAfterBest?: boolean;
}

/**
 * The personal best of a combo in a span of its history, found by an index. Only where the fastest lap is of a warm-up or
 * a drill, or known to fewer than three decimals, whether it counts depends on the sessions before it, and the whole line is
 * drawn.
 */
export async function pageBest(
  book: ReadOnlyLogbook,
  asked: Asked,
  maker: DigestMaker<SessionDigest>,
): Promise<BestCandidate | undefined> {
  const session = await fastestSession(book, asked, maker);
  const fastest = session && fastestCandidate(session.digest);
  const { isAfterBest = false } = asked;
  if (fastest === undefined || (mayTakeBest(fastest.kind, isAfterBest) && fastest.decimals === 3))
    return fastest;
  const digests = await readDigests(book, asked.comboId, maker, asked.span);
  const others = digests.filter(({ sessionId }) => sessionId !== asked.except);
  if (isAfterBest) return surelyFastest(others.flatMap(({ digest }) => digest.bestCandidates));
  return datedBests(others.map(({ digest }) => digest)).at(-1);
}

/** Of times that all may be a best the one whose latest possible value is the fastest. */
function surelyFastest(candidates: readonly BestCandidate[]): BestCandidate | undefined {
  return candidates.toSorted((a, b) => latestMs(a) - latestMs(b))[0];
}
