import { expect, it } from "vitest";
import { pageOf } from "#combo";
import { datedBests, sessionDigest } from "#stats";
import { type PeriodAccountInput, periodAccount } from "../../../../src/stats/account/periodAccount.ts";
import { aReference, aTarget } from "../../combo/someTargets.ts";
import { aRun, aSession, choices, type Told } from "../someRows.ts";

/** Evenings from 1 January 2026 on, of one page. */
function accountsOf(evenings: readonly (readonly Told[])[], more: Partial<PeriodAccountInput> = {}) {
  const digests = evenings.map((laps, day) =>
    sessionDigest(aSession(day), [aRun(1, laps, { sessionId: aSession(day).id })], choices),
  );
  return periodAccount({
    digests,
    bests: datedBests(digests),
    page: pageOf([], 0),
    targets: [],
    references: [],
    ...more,
  });
}

const five = (ms: number) => new Array<number>(5).fill(ms);

it("a session is measured against the PB from before it, and the first one, with nothing before it, against nothing", () => {
  const { accounts, account } = accountsOf([five(85_000), [84_000, ...five(84_600)], five(84_700)]);
  expect(accounts.map(({ sessionId, date, target }) => [sessionId, date, target])).toEqual([
    ["session 0", "2026-01-01", undefined],
    ["session 1", "2026-01-02", { ms: 85_000, from: "pb" }],
    ["session 2", "2026-01-03", { ms: 84_000, from: "pb" }],
  ]);
  expect(accounts[0]?.account).toEqual({
    known: false,
    reason: { because: "nothing to measure a period against" },
  });
  expect(accounts[1]?.account).toMatchObject({ value: { balance: -500 } });
  expect(accounts[2]?.account).toMatchObject({ value: { balance: 700, sessions: 1 } });
  // (6 · −500 + 5 · 700) ÷ 11 ms, and the first evening is told as left out.
  expect(account).toMatchObject({ value: { balance: 45, sessions: 2, sessionsLeftOut: 1, laps: 11 } });
});

it("evenings with nothing to be measured against give no account, and too few pace laps give their own reason", () => {
  expect(accountsOf([five(85_000)]).account).toEqual({
    known: false,
    reason: { because: "nothing to measure a period against" },
  });
  expect(accountsOf([five(85_000), [84_000]]).account).toMatchObject({
    known: false,
    reason: { needs: 5, of: "pace lap", has: 1 },
  });
});

it("a target in force comes before a reference lap, and that before the PB", () => {
  const reference = aReference(1, 83_000, { createdAt: 0 });
  const target = aTarget(1, { setAt: 0, setOn: "2026-01-01", value: 82_000 });
  const balances = (more: Partial<PeriodAccountInput>) =>
    accountsOf([five(85_000), five(85_000)], more).accounts.map(({ target: against }) => against);
  expect(balances({ references: [reference] })).toMatchObject([{ from: "reference" }, { ms: 83_000 }]);
  expect(balances({ references: [reference], targets: [target] })).toMatchObject([
    { from: "target" },
    { ms: 82_000 },
  ]);
});
