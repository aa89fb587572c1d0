import { describe, expect, test } from "vitest";
import { levelChange } from "#stats";
import { futureLevels } from "../../../../src/stats/level/futureLevels.ts";
import { levelModel } from "../../../../src/stats/level/levelModel.ts";
import { levelNow } from "../../../../src/stats/level/levelNow.ts";
import { levelPosterior } from "../../../../src/stats/level/levelPosterior.ts";
import { levelSettings } from "../../../../src/stats/level/levelSettings.ts";
import { levelsOff } from "../../../../src/stats/level/levelsOff.ts";
import { typicalError } from "../../../../src/stats/level/typicalError.ts";
import { bandOf } from "../../../../src/stats/weeks/bands.ts";
import type { SessionEvent } from "../../../../src/stats/weeks/sessionEvents.ts";
import { falling, flat, sessionsOf } from "../../../support/levelSessions.ts";

/** What drivers of many sessions are told: the whole model at work, too long to be run once a mutant. */
const answer = (medians: readonly number[], since = 0, confidence = 0.9) => {
  const found = levelChange({ sessions: sessionsOf(medians), since, confidence });
  if (!found.known) throw new Error("no change of level");
  return found.value;
};

describe("how far the level has moved", () => {
  test("a curved gain lies in its interval, which a wider confidence holds inside", () => {
    const { change, low, high, chanceFaster } = answer(falling(20));
    const truth = 4000 * (2 ** (-19 / 5) - 1);
    expect(low).toBeLessThan(truth);
    expect(high).toBeGreaterThan(truth);
    expect(change).toBeGreaterThan(low);
    expect(change).toBeLessThan(high);
    expect(chanceFaster).toBeGreaterThan(0.99);
    const wide = answer(falling(20), 0, 0.99);
    expect(wide.low).toBeLessThan(low);
    expect(wide.high).toBeGreaterThan(high);
  });

  test("times that rise steadily are never called level", () => {
    const rising = answer(flat(30).map((ms, i) => ms + 150 * i));
    expect(rising.levelSince).toBeUndefined();
    expect(rising.chanceLevel).toBeLessThan(0.2);
  });

  test("a step that is marked counts as change", () => {
    const sessions = sessionsOf([...flat(8), ...flat(8).map((ms) => ms - 1500)]);
    const ask = { sessions, since: 0, confidence: 0.9 };
    const marked = levelChange({ ...ask, events: [{ kind: "step", afterSession: 8 }] });
    if (!marked.known) throw new Error("no change of level");
    expect(marked.value.low).toBeLessThan(-1500);
    expect(marked.value.high).toBeGreaterThan(-1500);
    expect(marked.value.high).toBeLessThan(-1000);
  });

  test("a slow session after a break is the break's, where it is marked", () => {
    const sessions = sessionsOf([...flat(10), 91_500, 90_700]);
    const ask = { sessions, since: 0, confidence: 0.9 };
    const marked = levelChange({ ...ask, events: [{ kind: "break", afterSession: 10 }] });
    const unmarked = levelChange(ask);
    if (!marked.known || !unmarked.known) throw new Error("no change of level");
    expect(marked.value.change).toBeLessThan(unmarked.value.change / 2);
  });

  test("only the last 250 sessions are looked at", () => {
    const old = Array.from({ length: 30 }, () => 150_000);
    expect(answer([...old, ...falling(250)], 3)).toEqual({
      ...answer(falling(250), 0),
      levelSince: (answer(falling(250), 0).levelSince ?? 0) + 30,
    });
  });
});

const now = (medians: readonly number[]) => levelNow(levelPosterior({ sessions: sessionsOf(medians) }));

describe("whether a level moves", () => {
  test("it moves again since the session at which a still driver began to gain", () => {
    const { movingSince, isLevel, levelSince } = now(flat(24).map((ms, i) => ms - 250 * Math.max(0, i - 15)));
    expect(movingSince).toBeGreaterThanOrEqual(14);
    expect(movingSince).toBeLessThanOrEqual(18);
    expect(isLevel).toBe(false);
    expect(levelSince).toBeUndefined();
  });

  test("one that moved all along does not move again, nor does one at rest", () => {
    expect(now(falling(12)).movingSince).toBeUndefined();
    expect(now(flat(24)).movingSince).toBeUndefined();
  });

  test("at rest is said over a chance of 0.8, and of few sessions it is not", () => {
    expect(now(flat(24))).toMatchObject({ isLevel: true });
    expect(now(flat(24)).chanceLevel).toBeGreaterThan(0.8);
    expect(now(flat(4)).isLevel).toBe(false);
  });

  test("a level that creeps up for sure is never said to be at rest", () => {
    const creeping = now(flat(60).map((ms, i) => ms + 12 * i));
    expect(creeping.isLevel).toBe(false);
    expect(creeping.levelSince).toBeUndefined();
  });
});

const planned = (count: number) => Array.from({ length: count }, () => ({ laps: 20 }));
const after = (medians: readonly number[], events: readonly SessionEvent[] = [], ahead = 8) =>
  futureLevels(levelPosterior({ sessions: sessionsOf(medians), events }), planned(ahead), 3);
const bands = (events: readonly SessionEvent[]) => after(flat(20), events).medians.map(bandOf);
const width = (band: { low: number; high: number } | undefined) => (band?.high ?? 0) - (band?.low ?? 0);

describe("what is to come", () => {
  test("the first session after a break costs about 0.35 % and is less sure; six sessions later all is as before", () => {
    const [usual, afterBreak] = [bands([]), bands([{ kind: "break", afterSession: 20 }])];
    const cost = 0.005 * 2 ** (-10 / 20) * 90_000;
    expect((afterBreak[0]?.mid ?? 0) - (usual[0]?.mid ?? 0)).toBeGreaterThan(0.7 * cost);
    expect((afterBreak[0]?.mid ?? 0) - (usual[0]?.mid ?? 0)).toBeLessThan(1.3 * cost);
    expect(width(afterBreak[0])).toBeGreaterThan(1.15 * width(usual[0]));
    expect(Math.abs((afterBreak[6]?.mid ?? 0) - (usual[6]?.mid ?? 0))).toBeLessThan(0.1 * cost);
    expect(width(afterBreak[6])).toBeLessThan(1.1 * width(usual[6]));
  });

  test("a change just before the coming session makes all of them unsure, four spreads either way, for good", () => {
    const [usual, afterStep] = [bands([]), bands([{ kind: "step", afterSession: 20 }])];
    for (const k of [0, 7]) {
      expect(width(afterStep[k])).toBeGreaterThan(2.5 * width(usual[k]));
      expect(width(afterStep[k])).toBeLessThan(5 * width(usual[k]));
    }
  });

  test("sessions added at the end change none of those before, so a later date never lowers a chance", () => {
    for (const events of [[], [{ kind: "break", afterSession: 12 }] as const]) {
      const few = after(falling(12), events, 3).medians;
      const many = after(falling(12), events, 9).medians;
      expect(many.slice(0, 3)).toEqual(few);
    }
  });

  test("a driver who moves stops sooner where stopping is likelier", () => {
    const gain = (stopping: number) => {
      const posterior = levelPosterior({
        sessions: sessionsOf(flat(10).map((ms, i) => ms - 300 * i)),
        settings: { ...levelSettings, stopping },
      });
      const { levels } = futureLevels(posterior, planned(20), 3);
      return bandOf(levels[0] ?? []).mid - bandOf(levels[19] ?? []).mid;
    };
    expect(gain(0.2)).toBeLessThan(0.6 * gain(0.001));
  });
});

const end = (medians: readonly number[]) => {
  const model = levelModel({ sessions: sessionsOf(medians) });
  if (!model.known) throw new Error("no model");
  return levelsOff(model.value, 1);
};

describe("where the level ends", () => {
  test("where it is, for times that have come to rest", () => {
    expect(end(flat(30))).toEqual({ kind: "already" });
  });

  test("nowhere in sight, for times that rise", () => {
    expect(end(flat(20).map((ms, i) => ms + 100 * i))).toEqual({ kind: "rising" });
  });

  test("untold while the gain is young, or goes on in a straight line", () => {
    expect(end(falling(4))).toEqual({ kind: "untold" });
    expect(end(flat(20).map((ms, i) => ms - 150 * i))).toEqual({ kind: "untold" });
  });

  test("in tenths, and nearer than half of the gain, where a gain is dying away", () => {
    const found = end(falling(17));
    if (found.kind !== "at") throw new Error(found.kind);
    const { low, mid, high } = found.ms;
    for (const ms of [low, mid, high]) expect(ms % 100).toBe(0);
    expect(low).toBeLessThanOrEqual(mid);
    expect(mid).toBeLessThanOrEqual(high);
    expect(Math.abs(mid - 90_000)).toBeLessThanOrEqual(400);
    expect(high - low).toBeLessThanOrEqual(2000);
  });
});

describe("how much one session tells", () => {
  const errorOf = (medians: readonly number[]) =>
    typicalError(levelPosterior({ sessions: sessionsOf(medians) }));
  const spreadOut = (times: number) => flat(40).map((ms) => 90_000 + times * (ms - 90_000));

  test("one session lies from the level as far as medians scatter about it, also while it falls", () => {
    for (const medians of [flat(40), falling(40)]) {
      const { typicalError: error } = errorOf(medians);
      expect(error).toBeGreaterThan(85);
      expect(error).toBeLessThan(145);
    }
  });

  test("what is worth talking about is a fifth of it, and never less than 0.1 % of the lap", () => {
    const wide = errorOf(spreadOut(6));
    expect(wide.typicalError).toBeGreaterThan(520);
    expect(wide.worthwhile).toBeCloseTo(wide.typicalError / 5, 9);
    expect(errorOf(flat(40)).worthwhile).toBeCloseTo(90, 0);
  });
});
