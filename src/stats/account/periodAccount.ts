import { type Figure, known, type ReferenceLap, type Target, unknown } from "#domain";
import { accountTarget } from "../combo/accountTarget.ts";
import { accountLaps } from "../digest/lapsOfDigest.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { DatedBest, SessionAccount } from "../period/comboReviewFigures.ts";
import { accountsOfLaps, type TimeAccount } from "./timeAccount.ts";

/**
 * The time accounts of sessions, each against its own target, and of all together.
 * @param digests of one page, in time order
 * @param bests the page's personal-best line
 */
export function periodAccount(
  digests: readonly SessionDigest[],
  bests: readonly DatedBest[],
  targets: readonly Target[],
  references: readonly ReferenceLap[],
): { readonly accounts: readonly SessionAccount[]; readonly account: Figure<TimeAccount> } {
  const measured = digests.map((digest) => {
    const pbBefore = bests.findLast((best) => best.at < digest.startedAt)?.ms;
    return { digest, target: accountTarget(digest, targets, references, pbBefore) };
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

const nothingToMeasure = unknown(
  "no target, no reference lap and no PB from before a session to measure it against",
);

function withLeftOut(account: TimeAccount, more: number): TimeAccount {
  return { ...account, sessionsLeftOut: account.sessionsLeftOut + more };
}
