import { describe, expect, it } from "vitest";
import { type RigStep, rigSteps, type SideOfStep, sessionDigest } from "#stats";
import { aRun, aSession, choices } from "../someRows.ts";

/** Day 20 of 2026, counted from 1 January: the day of the change. */
const changeDay = 20;
const dayOf = (dayNumber: number) => aSession(dayNumber).date;
const records = [
  { id: "old", from: dayOf(0) },
  { id: "new", from: dayOf(changeDay) },
];
/** A session of runs of six laps, each told by its rig and its time. */
const driven = (dayNumber: number, ...runs: readonly (readonly [rigId: string | undefined, ms: number])[]) =>
  sessionDigest(
    aSession(dayNumber),
    runs.map(([rigId, ms], index) =>
      aRun(
        index + 1,
        Array.from({ length: 6 }, () => ms),
        { sessionId: aSession(dayNumber).id, ...(rigId !== undefined && { rigId }) },
      ),
    ),
    choices,
  );
/** The same with its sessions counted. */
const counted = (steps: readonly RigStep[]) => {
  const side = (one: SideOfStep | undefined) => one && { ...one, sessions: one.sessions.length };
  return steps.map((step) => ({
    ...step,
    before: side(step.before),
    after: side(step.after),
    mixed: step.neither.length,
  }));
};
const stepsOf = (...digests: ReturnType<typeof driven>[]) =>
  rigSteps({
    combos: [{ comboId: "combo", digests, pages: [] }],
    rigId: "new",
    records,
    today: dayOf(60),
  });
const stepOf = (...digests: ReturnType<typeof driven>[]) => counted(stepsOf(...digests))[0];

describe("a change of the rig on the day of a session", () => {
  it("leaves laps driven before it, that evening with the old settings, before the change", () => {
    const evening = driven(changeDay, ["old", 85_000]);
    expect(stepOf(driven(10, ["old", 85_000]), evening, driven(21, ["new", 84_000]))).toMatchObject({
      before: { sessions: 2, usual: { ms: 85_000 } },
      after: { sessions: 1, usual: { ms: 84_000 } },
      mixed: 0,
    });
  });

  it("counts an evening driven with both settings on neither side, and says so", () => {
    const both = driven(changeDay, ["old", 85_000], ["new", 80_000]);
    const sides = [driven(10, ["old", 85_000]), driven(21, ["new", 84_000])] as const;
    expect(stepOf(sides[0], both, sides[1])).toMatchObject({
      before: { sessions: 1, usual: { ms: 85_000 } },
      after: { sessions: 1, usual: { ms: 84_000 } },
      mixed: 1,
    });
    expect(stepOf(...sides, driven(25, ["old", 86_000]))).toMatchObject({
      before: { sessions: 1 },
      after: { sessions: 1 },
      mixed: 1,
    });
  });

  it("names each session of neither side with its day and the reason", () => {
    const both = driven(changeDay, ["old", 85_000], ["new", 80_000]);
    const [step] = stepsOf(
      driven(10, ["old", 85_000]),
      both,
      driven(21, ["new", 84_000]),
      driven(25, ["old", 86_000]),
    );
    expect(step?.neither.map(({ date, why }) => [date, why])).toEqual([
      [dayOf(changeDay), "both"],
      [dayOf(25), "old again"],
    ]);
    expect(step?.before?.sessions).toMatchObject([{ date: dayOf(10), usual: { ms: 85_000 } }]);
  });

  it("tells of a combo that has no side but for such sessions, near the change alone", () => {
    const both = driven(changeDay, ["old", 85_000], ["new", 80_000]);
    expect(stepOf(driven(10, ["old", 85_000]), both)).toMatchObject({ after: undefined, mixed: 1 });
    expect(stepOf(both)).toMatchObject({ before: undefined, after: undefined, mixed: 1 });
    expect(stepOf(driven(changeDay + 30, ["old", 85_000], ["new", 80_000]))).toBeUndefined();
  });

  it("goes by the date only where runs name no rig, or one that is gone", () => {
    const unnamed = [driven(19, [undefined, 85_000]), driven(changeDay, ["gone", 84_000])] as const;
    expect(stepOf(...unnamed)).toMatchObject({
      before: { usual: { ms: 85_000 } },
      after: { usual: { ms: 84_000 } },
    });
    expect(stepOf(driven(10, ["old", 85_000]), driven(21, ["old", 85_000]))).toBeUndefined();
  });
});

describe("the sides of a change of the rig", () => {
  const before = [
    driven(10, ["old", 85_000]),
    driven(15, ["old", 85_400]),
    driven(18, ["old", 85_200]),
  ] as const;
  const after = [
    driven(21, ["new", 84_000]),
    driven(24, ["new", 84_200]),
    driven(28, ["new", 84_100]),
  ] as const;
  const stepWith = (
    digests: readonly ReturnType<typeof driven>[],
    more: Partial<Parameters<typeof rigSteps>[0]> = {},
    pages: readonly { readonly from: number }[] = [],
  ) =>
    counted(
      rigSteps({
        combos: [{ comboId: "combo", digests, pages }],
        rigId: "new",
        records,
        today: dayOf(60),
        ...more,
      }),
    );

  it("are the medians of the usual laps, whatever order the sessions come in", () => {
    const all = [...before, ...after];
    for (const digests of [all, all.toReversed()])
      expect(stepWith(digests)).toMatchObject([
        {
          before: { sessions: 3, usual: { ms: 85_200 } },
          after: { sessions: 3, usual: { ms: 84_100 } },
          mixed: 0,
        },
      ]);
    expect(stepWith(all.toReversed())).toEqual(stepWith(all));
  });

  it("reach four weeks back and four weeks on, the day of the change counted among the latter", () => {
    const far = aSession(changeDay - 28).date;
    expect(far).toBe(dayOf(changeDay - 28));
    const late = (dayNumber: number) => stepWith([...before, driven(dayNumber, ["new", 83_000])])[0]?.after;
    expect(late(changeDay + 27)).toMatchObject({ sessions: 1, usual: { ms: 83_000 } });
    expect(late(changeDay + 28)).toBeUndefined();
    const early = (dayNumber: number) => stepWith([driven(dayNumber, ["old", 86_000]), ...after])[0]?.before;
    expect(early(changeDay - 28)).toMatchObject({ sessions: 1, usual: { ms: 86_000 } });
    expect(early(changeDay - 29)).toBeUndefined();
  });

  it("are those of the page on which the first session with the change stands", () => {
    const at = (dayNumber: number) => ({ from: aSession(dayNumber).startedAt });
    const all = [...before, ...after];
    expect(stepWith(all, {}, [at(15)])[0]).toMatchObject({ before: { sessions: 2, usual: { ms: 85_300 } } });
    expect(stepWith(all, {}, [at(24)])[0]).toMatchObject({ after: { sessions: 1, usual: { ms: 84_000 } } });
    expect(stepWith(all, {}, [at(21)])).toEqual([]);
  });

  it("are not there for a combo driven on one side only, and for a record that is none", () => {
    expect(stepWith(before)).toEqual([]);
    expect(stepWith(after)).toEqual([]);
    expect(stepWith([...before, ...after], { rigId: "gone" })).toEqual([]);
    const combos = [
      { comboId: "one side", digests: before, pages: [] },
      { comboId: "both", digests: [...before, ...after], pages: [] },
    ];
    expect(stepWith([], { combos }).map(({ comboId }) => comboId)).toEqual(["both"]);
  });

  it("have a step near their difference where practice explains none of it", () => {
    const many = [
      ...[1, 4, 7, 10, 13, 16, 19].map((day) => driven(day, ["old", 85_000 + 10 * (day % 3)])),
      ...[21, 24, 27, 30, 33, 36, 39].map((day) => driven(day, ["new", 84_000 + 10 * (day % 3)])),
    ];
    const [step] = stepWith(many);
    expect(step?.step).toMatchObject({ known: true });
    // The sessions on either side differ by a second.
    expect(step?.step.known && step.step.value.estimate).toBeLessThan(-500);
    expect(step?.step.known && step.step.value.estimate).toBeGreaterThan(-1500);
  });
});
