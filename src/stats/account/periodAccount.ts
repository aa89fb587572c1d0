import { type Figure, known, type ReferenceLap, type Target, unknown } from "#domain";
import { accountTarget } from "../combo/accountTarget.ts";
import { accountLaps } from "../digest/lapsOfDigest.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { DatedBest, SessionAccount } from "../period/comboReviewFigures.ts";
import { accountOfLaps, type TimeAccount } from "./timeAccount.ts";

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
    const target = accountTarget(digest, targets, references, pbBefore);
    return { digest, target, laps: accountLaps(digest) };
  });
  const accounts = measured.map(
    ({ digest, target, laps }): SessionAccount => ({
      sessionId: digest.sessionId,
      date: digest.date,
      target,
      account: target === undefined ? nothingToMeasure : accountOfLaps([laps], target.ms),
    }),
  );
  const withTarget = measured.flatMap(({ target, laps }) =>
    target === undefined ? [] : [{ ms: target.ms, laps }],
  );
  const whole =
    withTarget.length === 0
      ? nothingToMeasure
      : accountOfLaps(
          withTarget.map((session) => session.laps),
          withTarget.map((session) => session.ms),
        );
  const without = measured.length - withTarget.length;
  return { accounts, account: whole.known ? known(withLeftOut(whole.value, without)) : whole };
}

const nothingToMeasure = unknown(
  "no target, no reference lap and no PB from before a session to measure it against",
);

function withLeftOut(account: TimeAccount, more: number): TimeAccount {
  return { ...account, sessionsLeftOut: account.sessionsLeftOut + more };
}
