import { describe, expect, it } from "vitest";
import type { Target } from "#domain";
import { sessionDigest, weekStatement } from "#stats";
import { sayDriven, sayFound, weekAgainstMeaning, weekDays, weekFinding, weekNext, weekTitle } from "#words";
import { aRun, aSession, choices, type Told } from "../stats/someRows.ts";

const monday = "2026-01-05";
const about = (ms: number) => [0, 200, -100, 100, -200, 50].map((off) => ms + off);
const target = (fields: Partial<Target> = {}): Target => ({
  id: "t",
  createdAt: 0,
  updatedAt: 0,
  comboId: "a",
  kind: "best",
  value: 84_000,
  by: "2026-03-01",
  setAt: 0,
  setOn: "2026-01-01",
  ...fields,
});

/** The week's statement of one combo with sessions on these days, counted from 1 January. */
function state(sessions: readonly (readonly [day: number, laps: readonly Told[]])[], targets: Target[] = []) {
  const digests = sessions.map(([day, laps]) =>
    sessionDigest(aSession(day), [aRun(1, laps, { sessionId: `session ${day}` })], choices),
  );
  return weekStatement({
    monday,
    today: "2026-01-31",
    combos: [{ comboId: "a", digests, pages: [], targets, references: [] }],
    preferences: choices,
  });
}

const finding = (statement: ReturnType<typeof state>) => weekFinding(statement, "2026-01-31");

describe("the week in words", () => {
  it("is named as ISO 8601 counts it", () => {
    expect(weekTitle("2026-12-28")).toBe("Week 53 of 2026");
    expect(weekDays(monday)).toBe("Mon 5 Jan 2026 to Sun 11 Jan 2026");
    expect(sayDriven({ sessions: 1, laps: 41 })).toBe("1 session, 41 laps");
  });

  it("a target reached comes first, then a clear trend, then a new PB, then what is not known yet", () => {
    const faster = [-28, -21, -14, -7, 0, 5].map((day, n) => [day, about(86_000 - 200 * n)] as const);
    expect(finding(state(faster, [target({ value: 84_900 })]))).toMatchObject({
      title: "Target reached: best lap 1:24.900",
      reading: "Its date was Sun 1 Mar 2026.",
      comboId: "a",
    });
    expect(finding(state(faster))?.title).toMatch(
      /^Usual lap faster by 0\.9\d s in the 6 weeks to 11 Jan, very likely/,
    );
    const two = [
      [0, about(86_000)],
      [5, about(85_500)],
    ] as const;
    expect(finding(state(two))).toMatchObject({
      title: "PB 0.500 s faster: 1:25.300",
      reading: expect.stringMatching(
        /not the usual\. Not enough sessions with 5 pace laps each yet: 2 of 4\.$/,
      ),
    });
    expect(finding(state([[5, about(85_500)]]))?.title).toBe(
      "Not enough sessions with 5 pace laps each yet: 1 of 4",
    );
  });

  it("a PB known to tenths is faster by about so much", () => {
    const tenths = about(85_500).map((ms) => ({ ms, decimals: 1 }));
    expect(
      finding(
        state([
          [0, about(86_000)],
          [5, tenths],
        ]),
      )?.title,
    ).toBe("PB about 0.5 s faster: about 1:25.3");
  });

  it("says what to do about the largest loss, and without an account what would make one", () => {
    const slow: Told[] = [...about(85_000), [99_000, "off"], [99_000, "spin"]];
    expect(
      weekNext(
        state([
          [0, about(85_000)],
          [5, slow],
        ]),
      )?.reason,
    ).toMatch(/^Mistakes cost most this week: /);
    const first = weekNext(state([[5, about(85_000)]]));
    expect(first?.reason).toMatch(/^The week has no time account\. /);
    const under = weekNext(state([[5, about(83_000)]], [target()]));
    expect(under?.suggestion).toMatch(/^(Drive 8 laps as equal|Set a faster target)/);
  });

  it("says where the twelve weeks point elsewhere than the week", () => {
    const steady = [85_000, 85_010, 85_020, 85_000, 85_010, 85_020];
    const uneven = [0, 900, 0, 900, 0, 900].map((off) => 84_000 + off);
    const [week, both] = [
      weekNext(state([[5, uneven]], [target({ value: 83_900 })])),
      weekNext(
        state(
          [
            [1, steady],
            [2, steady],
            [3, steady],
            [5, uneven],
          ],
          [target({ value: 83_900 })],
        ),
      ),
    ];
    expect(week?.reason).toMatch(/^Uneven laps cost most this week: [^.]*\.\d\d s a lap [^.]*\.$/);
    expect(both?.reason).toMatch(/^Uneven laps cost most this week: .* Over the twelve weeks it was pace\.$/);
  });

  it("explains why the level may have moved further than two usual laps", () => {
    expect(weekAgainstMeaning("2026-01-11", "2026-01-31")).toMatch(/over the four weeks to 11 Jan\./);
    expect(weekAgainstMeaning("2026-01-11", "2026-01-11")).toMatch(/over the four weeks to today\./);
  });

  it("a week without a session has nothing to say", () => {
    expect([finding(state([])), weekNext(state([]))]).toEqual([undefined, undefined]);
  });
});

describe("what was found", () => {
  it.each([
    [0, 0, "Nothing found."],
    [1, 0, "1 session found."],
    [0, 2, "2 laps found."],
    [3, 40, "3 sessions and 40 laps found."],
    [3, 1840, "3 sessions and 1840 laps found. The newest 50 laps are shown: narrow the search for others."],
    [
      60,
      51,
      "60 sessions and 51 laps found. The newest 50 sessions and laps are shown: narrow the search for others.",
    ],
  ])("%s sessions, %s laps", (sessions, laps, said) => {
    expect(sayFound(sessions, laps, 50)).toBe(said);
  });
});
