import { describe, expect, it } from "vitest";
import { known, unknown } from "#domain";
import type { CornerWorth, UnusedRoad } from "#stats";
import {
  apexReading,
  apexTitle,
  cornerHabitsSay,
  cornerMistakesSay,
  cornerReading,
  cornerTitle,
  sayAssumed,
  sayAssumedInShort,
  sayFromAbove,
  sayHangsOn,
  sayRadii,
} from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const noMistakes: CornerWorth["mistakes"] = { counts: [], laps: 193, mistakes: 0, share: undefined, ms: 0 };
const road = (mid: number, fields: Partial<UnusedRoad> = {}) =>
  known<UnusedRoad>({
    reviewId: "r",
    on: "2026-11-12",
    gaps: { entry: 0.9, apex: 0, exit: -0.25 },
    ms: { low: mid / 2, mid, high: mid * 2 },
    speed: { low: 1, mid: 2, high: 3 },
    largest: { at: "entry", metres: 0.9, cars: 0.5 },
    nothingToGain: mid === 0,
    assumed: [],
    isTooSlow: false,
    ...fields,
  });
const notSeen = unknown({ because: "not seen in a replay" });
const wrong = { ...noMistakes, counts: [{ kind: "off", count: 2 } as const], mistakes: 2, ms: 150 };

describe("one corner", () => {
  it("begins with what its line gives away, else its mistakes, else that nobody has looked", () => {
    const title = (unused: CornerWorth["unused"], mistakes = noMistakes, mid?: number) =>
      cornerTitle({
        unused,
        mistakes,
        worth: mid === undefined ? undefined : { low: mid / 2, mid, high: mid * 2 },
      });
    expect(title(road(90), wrong, 240)).toBe("About 0.24 s a lap: road left unused 0.09 s, mistakes 0.15 s");
    expect(title(road(90), noMistakes, 90)).toBe("About 0.09 s a lap given away by road left unused");
    expect(title(notSeen, wrong, 150)).toBe("About 0.15 s a lap given away by mistakes");
    expect(title(road(0), noMistakes, 0)).toBe("Nothing to gain from a wider line here");
    expect(title(road(0, { gaps: { entry: 0, apex: 0, exit: 0 } }), noMistakes, 0)).toBe(
      "All of the road is used here",
    );
    expect(title(road(0, { ms: { low: 0, mid: 0, high: 790 } }), noMistakes, 0)).toBe(
      "Whether a wider line would gain here cannot be told",
    );
    expect(title(notSeen)).toBe("What its line gives away is not known yet");
    const narrow = unknown({ because: "car wider than the road", roadWidth: 1.5, carWidth: 1.8 });
    expect(title(narrow)).toBe("The road must be wider than the car: 1.5 m against 1.8 m");
    expect(cornerReading({ unused: narrow }, 1.8)).toMatch(/^Correct its measures/);
  });

  it("tells the gaps as they were seen", () => {
    const said = cornerReading({ unused: road(100) }, 1.8);
    expect(said).toBe(
      "Half a car left at entry (0.9 m), nothing left at the apex, 0.1 of a car over the edge at exit (0.25 m). It costs between 0.05 and 0.20 s, the straight after it included.",
    );
    expectWellFormed(said);
    expect(cornerReading({ unused: road(0) }, 1.8)).toMatch(/The shorter way round is as fast here\.$/);
    expect(cornerReading({ unused: road(0, { gaps: { exit: 0 } }) }, 1.8)).toBe("Nothing left at exit.");
    expect(cornerReading({ unused: notSeen }, 1.8)).toMatch(/^Look at it in a replay from outside/);
  });

  it("tells mistakes with their share and what they cost", () => {
    const share = { share: 2 / 193, low: 0.004, high: 0.031 };
    expect(cornerMistakesSay({ ...wrong, share }, 10)).toBe(
      "2 off in 193 laps of the last 10 sessions: 1 % of laps had a mistake here, between 0 and 4 %. They cost 0.15 s a lap.",
    );
    expect(cornerMistakesSay({ ...wrong, share, ms: 0 }, 10)).toMatch(/does not show in the lap times\.$/);
    expect(cornerMistakesSay({ ...wrong, share, ms: undefined }, 10)).toMatch(/five pace laps\.$/);
    expect(cornerMistakesSay(noMistakes, 1)).toBe("No mistake noted here in 193 laps of one session.");
    expect(cornerMistakesSay({ ...noMistakes, laps: 0 }, 0)).toBe("No laps to look at yet.");
    const cut = { ...noMistakes, counts: [{ kind: "cut", count: 1 } as const] };
    expect(cornerMistakesSay(cut, 10)).toBe("1 cut in 193 laps of the last 10 sessions.");
  });

  it("tells what reviews said of pedals and line, with counts", () => {
    expect(
      cornerHabitsSay({
        reviews: 3,
        braking: [{ what: "late", count: 2 }],
        throttle: [{ what: "twice", count: 1 }],
        offLine: 1,
      }),
    ).toBe("Braking late in 2 of 3 reviews, throttle twice in 1, off line in 1.");
    expect(cornerHabitsSay({ reviews: 3, braking: [], throttle: [], offLine: 0 })).toBeUndefined();
  });
});

describe("where the apex is best", () => {
  it("is late, early or in the middle", () => {
    expect(apexTitle({ best: 62, lost: 41 })).toBe(
      "A late apex is best: 0.04 s faster than one in the middle",
    );
    expect(apexTitle({ best: 38, lost: 41 })).toMatch(/^An early apex is best/);
    expect(apexTitle({ best: 53, lost: 41 })).toBe("An apex in the middle is as good as any");
    expect(apexTitle({ best: 45, lost: 41 })).toBe("An apex in the middle is as good as any");
    expect(apexTitle({ best: 44, lost: 5 })).toMatch(/^An early apex is best/);
    expect(apexTitle({ best: 70, lost: 3 })).toBe("An apex in the middle is as good as any");
  });

  it("has its reason: slow in, fast out, or the shorter way", () => {
    expect(apexReading({ best: 62, straight: 300, shorterWayMs: -20 })).toBe(
      "Best after 62 % of the turn, with 300 m of straight after it. Slow in, fast out: what is lost before the apex comes back along the straight.",
    );
    expect(apexReading({ best: 50, straight: 60, shorterWayMs: 50 })).toMatch(
      /The shorter way round wins here, by 0\.05 s: there is too little straight/,
    );
    expect(apexReading({ best: 50, straight: 60, shorterWayMs: 0 })).toBe(
      "Best after 50 % of the turn, with 60 m of straight after it.",
    );
  });
});

describe("what an estimate rests on", () => {
  const taken = {
    bend: "kink" as const,
    innerRadius: 45,
    roadWidth: 11,
    carWidth: 1.8,
    angle: 90,
    grip: 1.1,
    braking: 9.7,
    drive: 3.5,
    approachLength: 300,
    exitLength: 650,
    topSpeed: 60,
  };
  it("is listed with the values taken, and in short", () => {
    expect(sayAssumed(["radius", "width", "after", "top speed"], taken)).toEqual([
      "radius of the inner edge: 45 m",
      "road: 11 m wide",
      "straight after it: 650 m",
      "top speed: 216 km/h",
    ]);
    expect(sayAssumed(["bend", "angle", "before", "grip", "car width", "braking", "drive"], taken)).toEqual([
      "kind of bend: kink",
      "turning through 90°",
      "straight before it: 300 m",
      "grip of the tyres: 1.1",
      "car: 1.8 m wide",
      "braking: 9.7 m/s²",
      "drive out of it: 3.5 m/s²",
    ]);
    expect(sayAssumedInShort(["radius", "width", "grip"])).toBe("assumed: radius, width and grip");
    expect(sayAssumedInShort([])).toBe("nothing assumed");
  });

  it("says how far the answer hangs on it", () => {
    const told = [
      { grip: { low: 90, high: 110 }, width: { low: 80, high: 130 }, gap: { low: 0, high: 190 } },
    ] as const;
    const plausible = { grip: { low: 0.9, high: 1.4 }, width: { low: 9, high: 13 } };
    expect(sayHangsOn(...told, ["grip", "width"], plausible)).toEqual([
      "with a grip from 0.9 to 1.4: between 0.09 and 0.11 s",
      "on a road from 9 to 13 m wide: between 0.08 and 0.13 s",
      "with each gap misjudged by a quarter of a car: up to 0.19 s",
    ]);
    expect(sayHangsOn(...told, [], plausible).slice(0, 2)).toEqual([
      "with a little less grip or more: between 0.09 and 0.11 s",
      "on a road a little narrower or wider: between 0.08 and 0.13 s",
    ]);
  });
});

it("the drawing says in words what it shows", () => {
  expect(sayRadii(34.6, 33.9)).toBe("35 m, then 34 m");
  expect(sayRadii(71.1, 70.9)).toBe("71 m");
  expect(sayFromAbove({ direction: "left", angle: 130, widest: 36.1, driven: "35 m, then 34 m" })).toBe(
    "The corner from above, turning left through 130°: as driven arcs of 35 m, then 34 m; the widest line an arc of 36 m.",
  );
  expect(sayFromAbove({ direction: "right", angle: 90, widest: 71, driven: undefined })).toBe(
    "The corner from above, turning right through 90°: the widest line an arc of 71 m.",
  );
});
