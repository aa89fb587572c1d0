import { describe, expect, it } from "vitest";
import type { Lap, Run } from "#domain";
import { sessionFigures } from "../../../../../src/screens/log/session/sessionFigures.ts";
import { aSessionPage as data } from "../../../../support/aSessionPage.ts";

const stamps = { createdAt: 1, updatedAt: 1 };
const lap = (id: string, ms: number, remarks: Lap["remarks"] = []): Lap => ({
  id,
  n: Number(id.replace(/\D/g, "")),
  ms,
  decimals: 3,
  source: "typed",
  remarks,
  ...stamps,
});
const run = (id: string, laps: readonly Lap[], fields: Partial<Run> = {}): Run => ({
  id,
  sessionId: "s",
  comboId: "k",
  n: Number(id.replace(/\D/g, "")),
  startedAt: 1,
  kind: "pace",
  effort: "full",
  surface: "dry",
  note: "",
  laps,
  ...stamps,
  ...fields,
});
const three = [lap("l1", 84_900), lap("l2", 84_700), lap("l3", 84_800)];

describe("a session's page", () => {
  it("tells the lap that holds the PB from those that held it once, here and on the whole page", () => {
    const runs = [run("r1", three)];
    const before = { ms: 84_850, decimals: 3 };
    expect(sessionFigures(data(runs), before).standingId).toBe("l2");
    expect(sessionFigures(data(runs), before, before).standingId).toBe("l2");
    expect(sessionFigures(data(runs), before, { ms: 84_699, decimals: 3 }).standingId).toBeUndefined();
    // 1:24.6 may have been 1:24.699 at most, which is faster; 1:24.7 may have been 1:24.799, which is not.
    expect(sessionFigures(data(runs), before, { ms: 84_600, decimals: 1 }).standingId).toBeUndefined();
    expect(sessionFigures(data(runs), before, { ms: 84_700, decimals: 1 }).standingId).toBe("l2");
    expect(sessionFigures(data(runs), { ms: 84_000, decimals: 3 }).standingId).toBeUndefined();
  });

  it("knows whether the PB of a run was beaten since, in a later run or on a later evening", () => {
    const ended = { endedAt: 2 };
    const faster = [lap("l5", 84_500), lap("l6", 84_600)];
    const slower = [lap("l5", 84_900)];
    const beaten = (second: readonly Lap[], later?: number) => {
      const runs = [run("r1", three, { n: 1, ...ended }), run("r2", second, { n: 2, ...ended })];
      const best = later === undefined ? undefined : { ms: later, decimals: 3 };
      const { saidOf } = sessionFigures(data(runs), { ms: 84_850, decimals: 3 }, best);
      return [1, 2].map((number) => saidOf(number)?.isBeaten);
    };
    expect(beaten(slower)).toEqual([false, false]);
    expect(beaten(faster)).toEqual([true, false]);
    expect(beaten(slower, 84_699)).toEqual([true, true]);
    expect(beaten(faster, 84_500)).toEqual([true, false]);
  });

  it("leaves the place of a run that cannot be read, so that those after it keep their numbers", () => {
    const ended = { endedAt: 2 };
    const runs = [run("r1", three, { n: 1, ...ended }), run("r3", three, { n: 3, ...ended })];
    const { blocks, shown, said } = sessionFigures(
      data(runs, { unreadableRuns: [{ id: "r2", n: 2 }] }),
      undefined,
    );
    expect(blocks.map((block) => [block.number, block.run?.id])).toEqual([
      [1, "r1"],
      [2, undefined],
      [3, "r3"],
    ]);
    expect(shown.map(({ number }) => number)).toEqual([1, 3]);
    expect(said?.number).toBe(3);
  });

  it("calls runs by their place among those with laps, and the empty one being driven comes last", () => {
    const over = { endedAt: 2 };
    const { shown, current, said } = sessionFigures(
      data([
        run("r1", three, over),
        run("r2", [], over),
        run("r3", [lap("l4", 84_600)], over),
        run("r4", []),
      ]),
      undefined,
    );
    expect(shown.map((one) => [one.run.id, one.number])).toEqual([
      ["r1", 1],
      ["r3", 2],
      ["r4", 3],
    ]);
    expect(current?.id).toBe("r4");
    expect(said?.number).toBe(2);
  });

  it("has no run being driven once the session has ended", () => {
    const open = data([run("r1", three)]);
    const ended = sessionFigures({ ...open, session: { ...open.session, endedAt: 5 } }, undefined);
    expect(ended.current).toBeUndefined();
  });

  it("reads what is typed against the usual lap, the lap before and the best so far", () => {
    const { context } = sessionFigures(data([run("r1", three)]), { ms: 84_750, decimals: 3 });
    expect(context).toMatchObject({ usualMs: 84_800, previousMs: 84_800, pbMs: 84_700, isPaceRun: true });
  });

  it("knows no lap before in a new run, and asks about no slow lap in a drill", () => {
    const runs = [run("r1", three, { endedAt: 2 }), run("r2", [], { kind: "drill" })];
    const { context } = sessionFigures(data(runs), undefined);
    expect(context.previousMs).toBeUndefined();
    expect(context.usualMs).toBe(84_800);
    expect(context.paceTimes).toEqual([]);
  });

  it("lets no lap confirmed as odd, and none far off the page, be usual, even where there is no other", () => {
    const odd = (id: string, ms: number): Lap => ({ ...lap(id, ms), isOdd: true });
    const pb = { ms: 83_118, decimals: 3 };
    const only = [
      run("r1", [odd("l1", 12_000_000), odd("l2", 803_456), odd("l3", 70_000), odd("l4", 12_000_000)]),
    ];
    const { context } = sessionFigures(data(only), pb);
    expect(context).toMatchObject({ usualMs: 83_118, pbMs: 83_118, paceTimes: [], likeTimes: [] });
    const alone = sessionFigures(data(only), undefined).context;
    expect(alone.usualMs).toBeUndefined();
    const { context: next } = sessionFigures(data([run("r1", [])]), {
      ms: 12_000_000,
      decimals: 3,
      isOdd: true,
    });
    expect(next.usualMs).toBeUndefined();
    // Stored before laps were judged.
    const old = [run("r1", [lap("l1", 12_000_000), lap("l2", 83_900)])];
    expect(sessionFigures(data(old), pb).context).toMatchObject({ usualMs: 83_900, paceTimes: [83_900] });
  });

  it("completes a wet lap from wet laps: of the session, else of the page, else from none", () => {
    const dry = run("r1", three, { endedAt: 2 });
    const wet = (laps: readonly Lap[]) => run("r2", laps, { surface: "wet" });
    const pb = { ms: 84_700, decimals: 3 };
    const page = (runs: readonly Run[]) => ({ page: runs, layout: [], elsewhere: [] });
    expect(sessionFigures(data([dry, wet([])]), pb).context.usualMs).toBeUndefined();
    const before = page([run("r9", [lap("l9", 96_000)], { surface: "wet" })]);
    expect(sessionFigures(data([dry, wet([])]), pb, undefined, before).context.usualMs).toBe(96_000);
    const { context } = sessionFigures(data([dry, wet([lap("l4", 95_000)])]), pb, undefined, before);
    expect(context).toMatchObject({ usualMs: 95_000, paceTimes: [95_000], isDry: false });
  });

  it("knows of a lap that is typed anew all but itself", () => {
    const { contextOf } = sessionFigures(data([run("r1", three)]), { ms: 84_750, decimals: 3 });
    const context = contextOf(run("r1", three), "l2");
    expect(context).toMatchObject({ pbMs: 84_750, previousMs: 84_900, paceTimes: [84_900, 84_800] });
  });

  it("takes a guest's best for nobody's PB", () => {
    const guest = run("r1", [lap("l1", 80_000)], { guest: "Jo" });
    const { context } = sessionFigures(data([guest]), { ms: 84_750, decimals: 3 });
    expect(context).toMatchObject({ pbMs: 84_750, isPractice: false });
  });

  it("names its target only where that is more than the PB", () => {
    const pb = { ms: 84_750, decimals: 3 };
    expect(sessionFigures(data([run("r1", three)]), pb).target).toBeUndefined();
    const reference = { id: "f", comboId: "k", ms: 84_000, decimals: 3, source: "Jo", ...stamps };
    const withReference = data([run("r1", three)], { references: [reference] });
    expect(sessionFigures(withReference, pb).target).toEqual({ ms: 84_000, from: "reference" });
    expect(sessionFigures(withReference, pb).rows.get("r1")?.[1]?.toTarget).toBe(700);
  });

  it("counts a corner as often as mistakes name it", () => {
    const off: Lap["remarks"] = [{ kind: "off", corner: 5 }];
    const traffic: Lap["remarks"] = [{ kind: "traffic", corner: 7 }];
    const runs = [run("r1", [lap("l1", 90_000, off), lap("l2", 91_000, off), lap("l3", 86_000, traffic)])];
    expect(sessionFigures(data(runs), undefined).said?.corners).toEqual([5, 5]);
  });
});
