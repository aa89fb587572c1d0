import { type DigestMaker, fastestSession, type ReadOnlyLogbook, readDigests, type Span } from "#db";
import type { Id } from "#domain";
import { type BestCandidate, datedBests, mayTakeBest, type SessionDigest } from "#stats";

interface Asked {
  readonly comboId: Id;
  readonly span: Span;
  /** A session that is not asked about: the one being driven. */
  readonly except?: Id;
}

/**
 * The personal best of a combo in a span of its history, found by an index. Only where the fastest lap is of a warm-up or
 * a drill, whether it counts depends on the sessions before it, and the whole line is drawn.
 */
export async function pageBest(
  book: ReadOnlyLogbook,
  asked: Asked,
  maker: DigestMaker<SessionDigest>,
): Promise<BestCandidate | undefined> {
  const fastest = (await fastestSession(book, asked, maker))?.digest.bestClean;
  if (fastest === undefined || mayTakeBest(fastest.kind, false)) return fastest;
  const digests = await readDigests(book, asked.comboId, maker, asked.span);
  const others = digests.filter(({ sessionId }) => sessionId !== asked.except);
  return datedBests(others.map(({ digest }) => digest)).at(-1);
}
