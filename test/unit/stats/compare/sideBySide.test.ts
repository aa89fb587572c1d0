import { describe, expect, it } from "vitest";
import type { Run } from "#domain";
import { sideBySide } from "#stats";
import { aRun, aSession, choices } from "../someRows.ts";

const session = aSession(0);
const of = (...runs: Run[]) => ({ session, runs });
const even = (from: number, count = 6) => Array.from({ length: count }, (_, lap) => from + lap * 17);
const target = { ms: 83_000, from: "target" } as const;
const compare = (kind: "run" | "session", first: Run[], second: Run[], apart?: "combo" | "page") =>
  sideBySide({ kind, first: of(...first), second: of(...second), apart, target, preferences: choices });

describe("two runs side by side", () => {
  it("are compared by their laps, the later to the earlier", () => {
    const { shift, apart, first, second } = compare("run", [aRun(1, even(84_500))], [aRun(2, even(84_000))]);
    expect(apart).toBeUndefined();
    expect(shift).toMatchObject({ known: true, value: { by: "lap", first: 6, second: 6, estimate: -500 } });
    expect(shift.known && shift.value.high).toBeLessThan(0);
    expect([first.usual, second.usual]).toEqual([
      { known: true, value: 84_542.5 },
      { known: true, value: 84_042.5 },
    ]);
  });

  it("have for their shift the middle of all differences between a lap of one and a lap of the other", () => {
    // Hodges–Lehmann, by its definition; the interval of the same function is checked against R in test/reference.
    const a = [84_110, 84_220, 84_330, 84_440, 84_550];
    const b = [84_200, 84_310, 84_420, 84_530, 84_640];
    const differences = b.flatMap((later) => a.map((earlier) => later - earlier)).sort((x, y) => x - y);
    const { shift } = compare("run", [aRun(1, a)], [aRun(2, b)]);
    expect(shift).toMatchObject({ known: true, value: { estimate: differences[12] } });
  });

  it("have no interval under five laps on either side, and say which number is lacking", () => {
    const { shift } = compare("run", [aRun(1, even(84_500))], [aRun(2, even(84_000, 4))]);
    expect(shift).toMatchObject({
      known: false,
      reason: { needs: 5, of: "pace lap", has: 4, where: "on one side" },
    });
  });

  it("do not compare where one was wet, a drill or a guest's; wet compares with wet", () => {
    const dry = aRun(1, even(84_000));
    const wet = (n: number) => aRun(n, even(92_000), { surface: "wet" });
    expect(compare("run", [dry], [wet(2)]).apart).toBe("wet");
    expect(compare("run", [aRun(1, even(84_000), { kind: "drill" })], [dry]).apart).toBe("drill");
    expect(compare("run", [dry], [aRun(2, even(84_000), { guest: "" })]).apart).toBe("guest");
    expect(compare("run", [wet(1)], [wet(2)]).apart).toBeUndefined();
    expect(compare("run", [wet(1)], [dry]).apart).toBe("wet");
  });

  it("compare as races where both are, and a race with no practice", () => {
    const race = (n: number) => aRun(n, even(84_000), { kind: "race" });
    expect(compare("run", [race(1)], [race(2)]).apart).toBeUndefined();
    expect(compare("run", [race(1)], [aRun(2, even(84_000))]).apart).toBe("race");
    expect(compare("run", [aRun(2, even(84_000))], [race(1)]).apart).toBe("race");
  });

  it("each have what stands at the head of a run: of its clean laps where it has no pace laps", () => {
    const drill = aRun(1, [84_300, 84_100, [90_000, "spin"], 84_200], { kind: "drill" });
    const { first } = compare("run", [drill], [aRun(2, even(84_000))]);
    expect(first).toMatchObject({ laps: 3, usual: { known: true, value: 84_200 } });
    expect(first.cleanShare).toMatchObject({ share: 0.75 });
  });

  it("have no account without a time to measure them against, and say so", () => {
    const { first } = sideBySide({
      kind: "run",
      first: of(aRun(1, even(84_000))),
      second: of(aRun(2, even(84_000))),
      apart: undefined,
      target: undefined,
      preferences: choices,
    });
    expect(first.account).toEqual({
      known: false,
      reason: { because: "nothing to measure a session against" },
    });
  });
});

describe("two sessions side by side", () => {
  const evening = (from: number, runs: number) =>
    Array.from({ length: runs }, (_, n) => aRun(n + 1, even(from + n * 10)));

  it("are compared by their runs, because laps of one run are alike", () => {
    const { shift } = compare("session", evening(84_500, 3), evening(84_000, 3));
    expect(shift).toMatchObject({ known: true, value: { by: "run", first: 3, second: 3, estimate: -500 } });
  });

  it("have no interval under three runs of five pace laps, however many laps there are", () => {
    const { shift } = compare("session", evening(84_500, 2), evening(84_000, 3));
    expect(shift).toMatchObject({
      known: false,
      reason: { needs: 3, of: "pace run", has: 2, where: "on one side" },
    });
    const short = aRun(4, even(84_000, 4));
    expect(compare("session", [...evening(84_500, 2), short], evening(84_000, 3)).shift.known).toBe(false);
  });

  it("count five pace laps as enough of a run, and neither a spin nor a cut among them", () => {
    const five = (n: number) => aRun(n, even(84_000, 5));
    expect(compare("session", evening(84_500, 3), [five(1), five(2), five(3)]).shift.known).toBe(true);
    const spoilt = aRun(3, [...even(84_000, 4), [90_000, "spin"], [83_000, "cut"]]);
    expect(compare("session", evening(84_500, 3), [five(1), five(2), spoilt]).shift.known).toBe(false);
  });

  it("have the figures of all their runs, whatever the kind of the first", () => {
    const drill = aRun(1, even(80_000), { kind: "drill" });
    const { first, second, apart } = compare("session", [drill, aRun(2, [84_000, 84_300, 84_100])], [drill]);
    expect(apart).toBeUndefined();
    expect(first).toMatchObject({
      laps: 3,
      usual: { known: true, value: 84_100 },
      usualDecimals: 3,
      best: { known: true, value: { ms: 80_000, decimals: 3, lapId: "run s 1 lap 1" } },
    });
    expect(second.usual).toEqual({ known: false, reason: { needs: 1, of: "pace lap", has: 0 } });
    const { first: empty } = compare("session", [], [drill]);
    expect(empty.best).toEqual({ known: false, reason: { needs: 1, of: "clean lap", has: 0 } });
  });

  it("both have their account against one time, and none where times do not compare", () => {
    const { first, second } = compare("session", evening(84_500, 2), evening(84_000, 2));
    expect(
      first.account.known &&
        second.account.known &&
        first.account.value.balance - second.account.value.balance,
    ).toBe(500);
    const apart = compare("session", evening(84_500, 2), evening(84_000, 2), "combo");
    expect(apart.first.account.known || apart.second.account.known).toBe(false);
    expect(apart).toMatchObject({ apart: "combo", target: undefined });
  });

  it("have their sectors where they were written", () => {
    const laps = even(84_000).map((ms) => ({ ms, sectors: [30_000, ms - 30_000] }));
    const { first, second } = compare("session", [aRun(1, laps)], [aRun(1, even(84_000))]);
    expect(first.sectors).toMatchObject({ known: true });
    expect(second.sectors.known).toBe(false);
  });
});
