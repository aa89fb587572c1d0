import { accountTarget, type PageSpan } from "#combo";
import { type Figure, known, type ReferenceLap, type Target, unknown } from "#domain";
import { accountLaps } from "../digest/digestLaps.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { DatedBest, SessionAccount } from "../period/comboReviewFigures.ts";
import { type TimeAccount, timeAccount } from "./timeAccount.ts";

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
    const target = accountTarget({ session: digest, page, targets, references, pbBefore });
    return { digest, target, laps: accountLaps(digest) };
  });
  const accounts = measured.map(
    ({ digest, target, laps }): SessionAccount => ({
      sessionId: digest.sessionId,
      date: digest.date,
      target,
      account: target === undefined ? nothingToMeasure : timeAccount([laps], target.ms),
    }),
  );
  const withTarget = measured.flatMap(({ target, laps }) =>
    target === undefined ? [] : [{ ms: target.ms, laps }],
  );
  const whole =
    withTarget.length === 0
      ? nothingToMeasure
      : timeAccount(
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
