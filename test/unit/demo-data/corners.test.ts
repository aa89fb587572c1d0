import { describe, expect, test } from "vitest";
import { cornerLine } from "#physics";
import { type CornersReport, cornersReport, sessionsForCorners } from "#stats";
import type { ComboKey } from "../../../demo-data/combos.ts";
import { secondsThrough } from "../../../demo-data/cornerMotion.ts";
import { places, sectorOfCorner } from "../../../demo-data/places.ts";
import { type ReviewedCombo, trueChanges } from "../../../demo-data/trueCorners.ts";
import { comboOf, preferences, rows, runsOf, truth } from "./theDemo.ts";

const keys = Object.keys(trueChanges) as ReviewedCombo[];

function cornersOf(key: ComboKey): CornersReport {
  const { comboId, ...combo } = comboOf(key);
  const row = rows.combos.find(({ id }) => id === comboId);
  const car = rows.cars.find(({ id }) => id === row?.carId);
  const layout = rows.layouts.find(({ id }) => id === row?.layoutId);
  if (row === undefined || car === undefined || layout === undefined) throw new RangeError(key);
  const today = truth.lastDay;
  const looked = sessionsForCorners({ ...combo, today });
  return cornersReport({
    ...combo,
    today,
    sessions: looked.flatMap(({ sessionId }) =>
      rows.sessions
        .filter(({ id }) => id === sessionId)
        .map((session) => ({ session, runs: runsOf(sessionId) })),
    ),
    preferences,
    corners: layout.corners,
    car,
    lowestSpeeds: row.lowestSpeeds ?? [],
    reviews: rows.cornerReviews.filter((review) => review.comboId === comboId),
  });
}

describe.each(keys)("the corners of %s", (key) => {
  const report = cornersOf(key);
  const { from, to, corners, changeMs } = truth.corners[key];

  test("were reviewed twice, four weeks apart", () => {
    expect(report.change).toMatchObject({ from, to, corners: corners.map(({ number }) => number) });
    expect((Date.parse(to) - Date.parse(from)) / 86_400_000).toBe(28);
  });

  test("gave away less by what the truth says, within the range of change that is shown", () => {
    const shown = report.change?.ms ?? { low: Number.NaN, high: Number.NaN };
    expect(changeMs).toBeLessThan(-50);
    expect(changeMs).toBeGreaterThanOrEqual(shown.low);
    expect(changeMs).toBeLessThanOrEqual(shown.high);
    for (const { number, changeMs: known } of corners) {
      const ms = report.corners.find((corner) => corner.number === number)?.change?.ms;
      expect(known).toBeGreaterThanOrEqual(ms?.low ?? Number.NaN);
      expect(known).toBeLessThanOrEqual(ms?.high ?? Number.NaN);
    }
  });

  test("cost now what the truth says, within the range that is shown", () => {
    const { car, corners: trueCorners } = trueChanges[key];
    for (const corner of trueCorners) {
      const none = { entry: 0, apex: 0, exit: 0 };
      const lost = 1000 * (secondsThrough(corner, car, corner.now) - secondsThrough(corner, car, none));
      const unused = report.corners.find(({ number }) => number === corner.number)?.unused;
      if (!unused?.known) throw new Error(JSON.stringify(unused));
      expect(lost).toBeGreaterThanOrEqual(unused.value.ms.low);
      expect(lost).toBeLessThanOrEqual(unused.value.ms.high);
    }
  });

  test("whose gaps shrank were seen to, and the gaps judged lie within two tenths of the true ones", () => {
    const reviews = rows.cornerReviews.filter(({ comboId }) => comboId === truth.combos[key].comboId);
    const gapOf = (on: string, number: number) =>
      reviews.find((review) => review.on === on)?.corners.find((corner) => corner.number === number);
    expect(corners.some(({ shrank }) => shrank.length > 1)).toBe(true);
    for (const { number, before, now, shrank } of corners) {
      const [then, today] = [gapOf(from, number), gapOf(to, number)];
      for (const at of ["entry", "apex", "exit"] as const) {
        expect(Math.abs((then?.[at] ?? 9) - before[at])).toBeLessThanOrEqual(0.2);
        expect(Math.abs((today?.[at] ?? 9) - now[at])).toBeLessThanOrEqual(0.2);
        if (shrank.includes(at)) expect(today?.[at]).toBeLessThan(then?.[at] ?? 0);
      }
    }
  });

  test("have an answer: one first, with what it is worth and why", () => {
    const [first] = report.order;
    const corner = report.corners.find(({ number }) => number === first);
    expect(corner?.worth?.mid).toBeGreaterThan(50);
    expect(corner?.why.length).toBeGreaterThan(0);
    expect(report.sessions).toBe(10);
    expect(report.paceMs).toBeDefined();
  });
});

test("the combo driven last has a corner worth seconds from one review, without a change to tell of", () => {
  const last = rows.sessions.toSorted((a, b) => b.startedAt - a.startedAt)[0];
  expect(last?.comboId).toBe(truth.combos.ringTrainer.comboId);
  const report = cornersOf("ringTrainer");
  expect(report.corners.find(({ number }) => number === report.order[0])?.worth?.low).toBeGreaterThan(50);
  expect(report.reviews).toHaveLength(1);
  expect(report.change).toBeUndefined();
});

test("the times of the truth are walked by themselves, and agree with the sums of the same corner to a millisecond", () => {
  for (const { car, corners } of Object.values(trueChanges))
    for (const corner of corners) {
      const line = cornerLine({
        innerRadius: corner.radius,
        roadWidth: corner.width,
        kerbs: { entry: 0, apex: 0, exit: corner.kerbAtExit ?? 0 },
        carWidth: car.width,
        angle: corner.angle,
        unused: corner.before,
        grip: car.grip,
        braking: car.braking,
        drive: car.drive,
        topSpeed: car.topSpeed,
        approachLength: corner.approach,
        approachSpeed: corner.approachSpeed,
        exitLength: corner.exit,
      });
      if (!line.known) throw new Error(JSON.stringify(line.reason));
      expect(line.value.lengthened).toEqual({ approach: 0, exit: 0 });
      const none = { entry: 0, apex: 0, exit: 0 };
      const walked = secondsThrough(corner, car, corner.before) - secondsThrough(corner, car, none);
      expect(Math.abs(walked - line.value.seconds)).toBeLessThan(0.001);
    }
});

test("each corner has its kind, what follows it and the sector it is timed in", () => {
  for (const track of rows.tracks) {
    const place = places[track.name];
    const layout = rows.layouts.find(({ trackId }) => trackId === track.id);
    if (place === undefined || layout === undefined) throw new RangeError(track.name);
    expect(layout.corners.length).toBe(place.corners.length);
    for (const { number, bend, after, sector } of layout.corners) {
      expect(bend).toBeDefined();
      expect(after).toBeDefined();
      expect(sector).toBe(sectorOfCorner(place, number) + 1);
    }
    const measured = layout.corners.filter(({ radius }) => radius !== undefined);
    expect([1, 2]).toContain(measured.length);
  }
});
