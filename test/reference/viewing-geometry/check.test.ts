import { describe, expect, test } from "vitest";
import type { Figure } from "#domain";
import {
  curvedScreen,
  flatScreen,
  horizontalFromVertical,
  pixelsPerDegree,
  screenPlan,
  screenSize,
  sharpPixelsPerDegree,
  threeScreens,
  verticalFromHorizontal,
} from "#physics";
import data from "./viewing-geometry.json";

const { expected } = data;
const given = <T>(figure: Figure<T>): T => {
  if (!figure.known) throw new Error(JSON.stringify(figure.reason));
  return figure.value;
};
const pair = (aspect: readonly number[]): [number, number] => [aspect[0] ?? 0, aspect[1] ?? 0];

describe("angles of screens against viewing-distance rules and trigonometry", () => {
  test("the published 30° and 40° viewing distances give 30° and 40°", () => {
    for (const rule of expected.rulesOfThumb) {
      const { width } = rule.aspect ? screenSize({ diagonal: 1, aspect: pair(rule.aspect) }) : { width: 1 };
      const exact = rule.distanceOverDiagonal ?? rule.distanceOverWidth ?? 0;
      const seen = given(flatScreen({ width, height: 1, distance: exact }));
      expect(seen.horizontal).toBeCloseTo(rule.horizontalDeg, 6);
      expect(Math.abs(exact - rule.published)).toBeLessThanOrEqual(rule.published === 1.19 ? 0.01 : 0.005);
    }
  });

  test("flat screens from their diagonal", () => {
    for (const screen of expected.flat) {
      const size = screenSize({ diagonal: screen.diagonalInch * 25.4, aspect: pair(screen.aspect) });
      expect(size.width).toBeCloseTo(screen.widthMm, 6);
      expect(size.height).toBeCloseTo(screen.heightMm, 6);
      const seen = given(flatScreen({ ...size, distance: screen.distanceMm }));
      expect(seen.horizontal).toBeCloseTo(screen.horizontalDeg, 6);
      expect(seen.vertical).toBeCloseTo(screen.verticalDeg, 6);
    }
  });

  test("horizontal and vertical angles turn into each other", () => {
    for (const { aspect, verticalDeg, horizontalDeg } of expected.conversion) {
      expect(horizontalFromVertical(verticalDeg, pair(aspect))).toBeCloseTo(horizontalDeg, 6);
      expect(verticalFromHorizontal(horizontalDeg, pair(aspect))).toBeCloseTo(verticalDeg, 6);
    }
  });

  test("three screens, turned and not", () => {
    for (const screens of expected.threeFlatScreens) {
      const seen = given(
        threeScreens({
          width: screens.widthMm,
          height: 300,
          distance: screens.distanceMm,
          sideAngle: screens.sideTurnDeg,
          bezel: screens.bezelMm,
        }),
      );
      expect(seen.centre).toBeCloseTo(screens.centreDeg, 6);
      expect(seen.eachSide).toBeCloseTo(screens.eachSideDeg, 6);
      expect(seen.horizontal).toBeCloseTo(screens.totalDeg, 6);
    }
  });

  test("side screens are drawn as far from the eye as they stand", () => {
    for (const screens of expected.threeFlatScreens) {
      const { glass } = screenPlan({
        kind: "three",
        width: screens.widthMm,
        distance: screens.distanceMm,
        sideAngle: screens.sideTurnDeg,
        bezel: screens.bezelMm,
      });
      for (const side of [glass[0], glass[2]]) {
        const [[ax, ay], [bx, by]] = [side?.from ?? [0, 0], side?.to ?? [0, 0]];
        // How far a line through two points passes from (0, 0).
        const away = Math.abs(ax * by - ay * bx) / Math.hypot(bx - ax, by - ay);
        expect(away).toBeCloseTo(screens.eyeToSideScreenPlane, 6);
      }
    }
  });

  test("curved glass is drawn with the chord and the depth it has", () => {
    for (const screen of expected.curved) {
      const [glass] = screenPlan({
        kind: "curved",
        width: screen.arcWidthMm,
        radius: screen.radiusMm,
        distance: screen.distanceMm,
      }).glass;
      expect(glass?.to[0]).toBeCloseTo(screen.halfChord, 6);
      expect(screen.distanceMm - (glass?.to[1] ?? 0)).toBeCloseTo(screen.sagitta, 6);
    }
  });

  test("the best turn sets the eye square before the side screens", () => {
    for (const screens of expected.threeFlatScreensBestTurn) {
      const lengths = { width: screens.widthMm, height: 300, distance: screens.distanceMm, bezel: 0 };
      const { bestSideAngle } = given(threeScreens({ ...lengths, sideAngle: 0 }));
      expect(bestSideAngle).toBeCloseTo(screens.bestTurnDeg, 6);
      const seen = given(threeScreens({ ...lengths, sideAngle: bestSideAngle }));
      expect(seen.horizontal).toBeCloseTo(screens.totalDeg, 6);
      expect(seen.eachSide).toBeCloseTo(seen.centre, 6);
    }
  });

  test("curved screens, and one seen from the centre of its own circle", () => {
    for (const screen of [...expected.curved, expected.curvedFromCentreOfCurvature]) {
      const seen = given(
        curvedScreen({
          arcWidth: screen.arcWidthMm,
          height: 300,
          radius: screen.radiusMm,
          distance: screen.distanceMm,
        }),
      );
      expect(seen.horizontal).toBeCloseTo(screen.horizontalDeg, 6);
    }
  });

  test("pixels per degree at the centre, and the distance of 60 per degree", () => {
    for (const { pixels, widthMm, distanceMm, centre } of expected.pixelsPerDegree) {
      const sharpness = given(pixelsPerDegree({ pixels, width: widthMm, distance: distanceMm }));
      expect(Math.abs(sharpness / centre - 1)).toBeLessThan(1e-4);
    }
    const distance = expected.distanceFor60PerDegree.distanceOverPixelPitch;
    const there = given(pixelsPerDegree({ pixels: 1, width: 1, distance }));
    expect(Math.abs(there / sharpPixelsPerDegree - 1)).toBeLessThan(1e-4);
  });
});
