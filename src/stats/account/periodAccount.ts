import { accountTarget, type PageSpan } from "#combo";
import { type Figure, known, type ReferenceLap, type Target, unknown } from "#domain";
import type { DatedBest } from "../bests/datedBest.ts";
import { accountLaps } from "../digest/lapsOfDigest.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { SessionAccount } from "../period/comboReviewFigures.ts";
import { accountsOfLaps, type TimeAccount } from "./timeAccount.ts";

/** Sessions of one page in time order, and what they may be measured against. */
export interface PeriodAccountInput {
  readonly digests: readonly SessionDigest[];
  /** The page's personal-best line. */
  readonly bests: readonly DatedBest[];
  readonly page: PageSpan;
  readonly targets: readonly Target[];
  readonly references: readonly ReferenceLap[];
}

/** The time accounts of sessions, each against its own target, and of all together. */
export function periodAccount({ digests, bests, page, targets, references }: PeriodAccountInput): {
  readonly accounts: readonly SessionAccount[];
  readonly account: Figure<TimeAccount>;
} {
  const measured = digests.map((digest) => {
    const pbBefore = bests.findLast((best) => best.at < digest.startedAt)?.ms;
    return { digest, target: accountTarget({ session: digest, page, targets, references, pbBefore }) };
  });
  const withTarget = measured.flatMap(({ digest, target }) =>
    target === undefined ? [] : [{ digest, target }],
  );
  const { whole, each } = accountsOfLaps(
    withTarget.map(({ digest }) => accountLaps(digest)),
    withTarget.map(({ target }) => target.ms),
  );
  const own = new Map(withTarget.map(({ digest }, index) => [digest, each[index]]));
  const accounts = measured.map(
    ({ digest, target }): SessionAccount => ({
      sessionId: digest.sessionId,
      date: digest.date,
      target,
      account: own.get(digest) ?? nothingToMeasure,
    }),
  );
  if (withTarget.length === 0) return { accounts, account: nothingToMeasure };
  const without = measured.length - withTarget.length;
  return { accounts, account: whole.known ? known(withLeftOut(whole.value, without)) : whole };
}

const nothingToMeasure = unknown({ because: "nothing to measure a period against" });

function withLeftOut(account: TimeAccount, more: number): TimeAccount {
  return { ...account, sessionsLeftOut: account.sessionsLeftOut + more };
}
