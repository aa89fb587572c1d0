import { describe, expect, it } from "vitest";
import { unknown } from "#domain";
import { practiceRate } from "#stats";
import { daysUntil, forecastBasis } from "../../../../src/stats/targets/forecastBasis.ts";
import { aDigest, aDigestOf } from "../period/manySessions.ts";
import { aRun, type Told } from "../someRows.ts";

const five = (ms: number): Told[] => new Array<number>(5).fill(ms);
const known = (...asked: Parameters<typeof forecastBasis>) => {
  const basis = forecastBasis(...asked);
  if (!basis.known) throw new Error(JSON.stringify(basis.reason));
  return basis.value;
};

describe("how much was driven lately", () => {
  const today = "2026-02-11";

  it("counts six weeks, today and the first day of them included", () => {
    const digests = [aDigest(-1, five(84_000)), aDigest(0, [84_000, 84_100]), aDigest(41, five(84_000))];
    // 1 January is the first of the six weeks, and a session lies before it.
    expect(practiceRate(digests, today)).toEqual({ sessionsAWeek: 2 / 6, lapsASession: 3.5, sessions: 2 });
    expect(practiceRate([...digests, aDigest(42, five(84_000))], today)?.sessions).toBe(2);
  });

  it("counts from the first session of a driver who began within them, over a week at least", () => {
    // The first on 1 January: two weeks up to the 14th.
    const digests = [0, 3, 9].map((day) => aDigest(day, five(84_000)));
    const since = "2026-01-01";
    expect(practiceRate(digests, "2026-01-14")).toMatchObject({ sessionsAWeek: 1.5, sessions: 3, since });
    expect(practiceRate(digests.slice(0, 2), "2026-01-04")).toMatchObject({ sessionsAWeek: 2, since });
  });

  it("leaves out a session without a timed lap, and is not known where there is no other", () => {
    const empty = [aDigest(30, [[undefined, "off"]]), aDigest(31, [])];
    expect(practiceRate([aDigest(29, [84_000]), ...empty], today)).toMatchObject({
      lapsASession: 1,
      sessions: 1,
    });
    expect(practiceRate(empty, today)).toBeUndefined();
  });
});

describe("what a forecast is made from", () => {
  const page = [0, 3, 6, 9].map((day) => aDigest(day, five(84_000 - 10 * day)));
  const ask = { comboId: "combo", page, today: "2026-01-12" };

  it("for a mean of laps in a row the pace runs alone: a drill driven slowly is left out, and so is a session without them", () => {
    const drill = aRun(1, five(90_000), { kind: "drill" });
    const short = aRun(2, [84_000, 84_100, 83_900, [84_200, "off"], 84_000, 84_100], {});
    const withDrill = aDigestOf(12, [drill, aRun(2, five(83_800))]);
    const pages = [...page, withDrill, aDigestOf(15, [drill, short])];
    const { question } = known({ ...ask, page: pages, today: "2026-01-17" }, { kind: "meanOf", laps: 5 });
    expect(question.history.map(({ bestMs }) => bestMs)).toEqual([84_000, 83_970, 83_940, 83_910, 83_800]);
  });

  it("for a mean of more laps than any run holds needs sessions with so many in a row", () => {
    expect(forecastBasis(ask, { kind: "meanOf", laps: 9 })).toEqual(
      unknown({ needs: 3, of: "session", each: { needs: 9, of: "pace lap in a row" }, has: 0 }),
    );
  });

  it("the sessions, breaks and days to come of a year at the present rate", () => {
    const { question, rate, ahead, horizon } = known({ ...ask, page: [...page, aDigest(-20, five(85_000))] });
    expect(question.history.map(({ medianMs }) => medianMs)).toEqual([
      85_000, 84_000, 83_970, 83_940, 83_910,
    ]);
    expect(question.events).toEqual([{ kind: "break", afterSession: 1 }]);
    expect(rate.sessions).toBe(5);
    // Five sessions in the 32 days since the first are one every 6.4: the first after 3.2, and 57 in a year.
    expect(ahead.slice(0, 2)).toEqual(["2026-01-15", "2026-01-22"]);
    expect(ahead).toHaveLength(57);
    expect(horizon).toBe("2027-01-12");
  });

  it("is drawn otherwise for another combo, and the same for the same", () => {
    expect(known(ask).question.seed).toBe(known({ ...ask, today: "2026-01-13" }).question.seed);
    expect(known(ask).question.seed).not.toBe(known({ ...ask, comboId: "other" }).question.seed);
  });

  it("takes no break where the combo was driven on another page", () => {
    const rested = [...page.slice(0, 3), aDigest(20, five(84_000))];
    const elsewhere = aDigest(13, five(84_000), {}, { id: "elsewhere" });
    expect(known({ ...ask, page: rested, today: "2026-01-22" }).question.events).toHaveLength(1);
    const driven = [...rested, elsewhere];
    expect(known({ ...ask, page: rested, driven, today: "2026-01-22" }).question.events).toEqual([]);
  });

  it("rests on the last 250 sessions at most", () => {
    const many = Array.from({ length: 251 }, (_, day) => aDigest(day, five(84_000 + day)));
    const { history } = known({ ...ask, page: many, today: "2026-09-09" }).question;
    expect(history).toHaveLength(250);
    expect(history[0]?.medianMs).toBe(84_001);
  });

  it("needs three sessions, and one lately", () => {
    expect(forecastBasis({ ...ask, page: page.slice(0, 2) })).toMatchObject({ reason: { needs: 3, has: 2 } });
    expect(known({ ...ask, page: page.slice(0, 3) }).question.history).toHaveLength(3);
    expect(forecastBasis({ ...ask, today: "2026-03-01" })).toEqual({
      known: false,
      reason: { because: "nothing driven lately" },
    });
  });

  it("counts on the sessions up to a date, that day included, and on one at least", () => {
    const basis = known({ ...ask, page: [...page, aDigest(-20, five(85_000))] });
    expect(daysUntil(basis, "2026-01-22")).toEqual(["2026-01-15", "2026-01-22"]);
    expect(daysUntil(basis, "2026-01-21")).toEqual(["2026-01-15"]);
    expect(daysUntil(basis, "2026-01-14")).toEqual(["2026-01-14"]);
  });
});
