import { describe, expect, it } from "vitest";
import { pageOf, presentPage } from "#combo";
import type { Forecast, Target } from "#domain";
import { comboStanding, forecastOutcome, forecastsToMake, type SessionDigest } from "#stats";
import { aDigest } from "../period/manySessions.ts";
import { aPage, aSession, type Told } from "../someRows.ts";

const aTarget = (fields: Partial<Target> = {}): Target => ({
  ...{ id: "target", createdAt: 0, updatedAt: 0, comboId: "combo", kind: "best", value: 83_000 },
  ...{ setAt: aSession(0).startedAt, setOn: "2026-01-01", by: "2026-02-01" },
  ...fields,
});
/** Made the minute after the session of 11 January began. */
const aForecast = (fields: Partial<Forecast> = {}): Forecast => ({
  ...{
    id: "f",
    createdAt: aSession(10).startedAt + 60_000,
    updatedAt: 0,
    targetId: "target",
    comboId: "combo",
  },
  ...{ madeOn: "2026-01-11", by: "2026-01-20", chance: 0.5, method: "m" },
  ...fields,
});
const outcome = (
  digests: readonly SessionDigest[],
  forecast: Partial<Forecast> = {},
  { turnedAt, today = "2026-01-21" }: { readonly turnedAt?: number; readonly today?: string } = {},
) =>
  forecastOutcome({
    forecast: aForecast(forecast),
    target: aTarget(),
    digests,
    pages: turnedAt === undefined ? [] : [aPage(turnedAt)],
    today,
  });
const because = (reason: string) => ({ known: false, reason: { because: reason } });
const yes = { known: true, value: true };
const no = { known: true, value: false };

describe("what came of a forecast", () => {
  it("counts sessions after it, up to its last day", () => {
    expect(outcome([aDigest(10, [82_900]), aDigest(12, [83_100])])).toEqual(no);
    expect(outcome([aDigest(19, [83_000])])).toEqual(yes);
    expect(outcome([aDigest(20, [83_000])])).toEqual(no);
    expect(outcome([])).toEqual(no);
  });

  it("is not told before the last day is over, not even of one that was reached", () => {
    const reached = [aDigest(12, [82_000])];
    expect(outcome(reached, {}, { today: "2026-01-20" })).toEqual(because("date to come"));
    expect(outcome(reached)).toEqual(yes);
  });

  it("takes a time known to tenths only where it was surely there", () => {
    expect(outcome([aDigest(12, [{ ms: 83_000, decimals: 1 }])])).toEqual(no);
    expect(outcome([aDigest(12, [{ ms: 82_900, decimals: 1 }])])).toEqual(yes);
  });

  it("is of the target as it was forecast, whatever it is now", () => {
    const laps = [83_400, 83_600, 83_500, 83_700, 83_800];
    const of = (fields: Partial<Forecast>) => outcome([aDigest(12, laps)], fields);
    expect(of({ kind: "median", value: 83_600 })).toEqual(yes);
    expect(of({ kind: "median", value: 83_599 })).toEqual(no);
    expect(of({ kind: "meanOf", laps: 3, value: 83_500 })).toEqual(yes);
    expect(of({ kind: "meanOf", laps: 3, value: 83_499 })).toEqual(no);
    expect(of({ kind: "scatter", value: 500 })).toEqual(no);
  });

  it("is none where a page was turned before its date, unless it was reached before that", () => {
    const turned = { turnedAt: aSession(15).startedAt };
    expect(outcome([aDigest(16, [82_000])], {}, turned)).toEqual(because("page turned before its date"));
    expect(outcome([aDigest(13, [82_000])], {}, turned)).toEqual(yes);
    expect(outcome([aDigest(13, [84_000])], {}, { turnedAt: aSession(21).startedAt })).toEqual(no);
  });

  it("is none where nothing says what it was about", () => {
    const digests = [aDigest(12, [82_000])];
    const of = { forecast: aForecast(), target: undefined, digests, pages: [], today: "2026-01-21" };
    expect(forecastOutcome(of)).toEqual(because("target gone"));
    expect(forecastOutcome({ ...of, forecast: aForecast({ reached: true }) })).toEqual(yes);
  });
});

describe("the forecasts to be kept", () => {
  const five = (ms: number): Told[] => new Array<number>(5).fill(ms);
  const page = [0, 3, 6, 9].map((day) => aDigest(day, five(84_000 - 100 * day)));
  const today = "2026-01-11";
  const toMake = (targets: readonly Target[], forecasts: readonly Forecast[] = []) =>
    forecastsToMake({
      ...{ comboId: "combo", page, today, forecasts, span: presentPage([], today) },
      states: comboStanding({ comboId: "combo", digests: page, pages: [], targets, today }).targets,
    });
  const last = page.at(-1)?.sessionId ?? "";

  it("name the target as it is, what was counted on, and the session they were made after", () => {
    const [made, ...others] = toMake([aTarget({ value: 82_500 })]);
    expect(others).toEqual([]);
    // Four sessions in the eleven days since the first are one every 2.75: eight in the three weeks to come.
    expect(made).toMatchObject({
      ...{ targetId: "target", kind: "best", value: 82_500, by: "2026-02-01", madeOn: today },
      ...{ madeAfter: last, sessions: 8, lapsASession: 5 },
    });
    expect(made?.chance).toBeGreaterThan(0);
    expect(made?.chance).toBeLessThan(1);
  });

  it("are one a session and target, also where it was made elsewhere", () => {
    const kept = aForecast({ madeAfter: last });
    expect(toMake([aTarget({ value: 82_500 })], [kept])).toEqual([]);
    expect(toMake([aTarget({ value: 82_500 })], [{ ...kept, madeAfter: "earlier" }])).toHaveLength(1);
    expect(toMake([aTarget({ value: 82_500 })], [{ ...kept, targetId: "other" }])).toHaveLength(1);
  });

  it("are of open targets with a date and a chance only", () => {
    const { by: _, ...undated } = aTarget({ value: 82_500 });
    const none = [
      undated,
      aTarget({ value: 82_500, archivedAt: 1 }),
      aTarget({ value: 82_500, by: today }),
      aTarget({ kind: "scatter", value: 10 }),
      aTarget({ value: 90_000 }),
    ];
    for (const target of none) expect(toMake([target]), JSON.stringify(target)).toEqual([]);
    expect(toMake([aTarget({ kind: "meanOf", laps: 3, value: 82_500 })])).toMatchObject([
      { kind: "meanOf", laps: 3 },
    ]);
  });

  it("are none on the day on which a target was set or changed, where a slip is put right", () => {
    const earlier = (untilDay: string) => [{ kind: "best", value: 83_500, until: 0, untilDay }] as const;
    const target = (fields: Partial<Target>) => aTarget({ value: 82_500, ...fields });
    expect(toMake([target({ setOn: today, setAt: aSession(9).startedAt })])).toEqual([]);
    expect(toMake([target({ earlier: earlier(today) })])).toEqual([]);
    expect(toMake([target({ earlier: earlier("2026-01-10") })])).toHaveLength(1);
  });

  it("are none of a target of an older page", () => {
    const turnedAt = aSession(5).startedAt;
    const pages = [aPage(turnedAt)];
    const target = aTarget({ value: 82_500 });
    const states = comboStanding({
      comboId: "combo",
      digests: page,
      pages,
      targets: [target],
      today,
    }).targets;
    const span = pageOf(pages, aSession(9).startedAt);
    expect(forecastsToMake({ comboId: "combo", page, today, forecasts: [], span, states })).toEqual([]);
  });
});
