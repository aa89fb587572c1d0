import { expect, test } from "vitest";
import type { ComboWithNames } from "#db";
import {
  namesOf,
  pickedCombo,
  problemOfName,
  trackOptions,
} from "../../../../../src/screens/log/start/comboChoice.ts";

const stamps = { createdAt: 1, updatedAt: 1 };
const car = (id: string, name: string) => ({ id, name, ...stamps });
const combo = (
  id: string,
  ofCar: [string, string],
  ofTrack: [string, string, string, string],
): ComboWithNames => {
  const [trackId, trackName, layoutId, layoutName] = ofTrack;
  return {
    combo: { id, carId: ofCar[0], layoutId, ...stamps },
    car: car(...ofCar),
    track: { id: trackId, name: trackName, ...stamps },
    layout: { id: layoutId, trackId, name: layoutName, corners: [], ...stamps },
  };
};
const hatch: [string, string] = ["c1", "Club hatch"];
const known = [
  combo("k1", hatch, ["t1", "Varnholt Ring", "l1", ""]),
  combo("k2", ["c2", "endurance trainer"], ["t1", "Varnholt Ring", "l2", "short"]),
];

test("a name that differs only in case or spaces is the old one", () => {
  expect(pickedCombo(" club  HATCH", "varnholt ring", known)).toEqual({ comboId: "k1" });
});

test("a known car on a known layout it never drove makes only the combo", () => {
  expect(pickedCombo("endurance trainer", "Varnholt Ring", known)).toEqual({
    combo: { car: { id: "c2" }, track: { id: "t1" }, layout: { id: "l1" } },
  });
});

test("a comma sets off the name of a new layout", () => {
  expect(pickedCombo("Kart", "Tessemoor, long", known)).toEqual({
    combo: { car: { name: "Kart" }, track: { name: "Tessemoor" }, layout: { name: "long" } },
  });
  expect(pickedCombo("Kart", " Tessemoor ", known)).toEqual({
    combo: { car: { name: "Kart" }, track: { name: "Tessemoor" } },
  });
});

test("each car, track and layout is offered once", () => {
  const { cars, layouts, tracks } = namesOf([
    ...known,
    combo("k3", hatch, ["t1", "Varnholt Ring", "l2", "short"]),
  ]);
  expect(cars.map(({ label }) => label)).toEqual(["Club hatch", "endurance trainer"]);
  expect(layouts).toHaveLength(2);
  expect(tracks).toHaveLength(1);
});

test("more words behind a track's name are offered as a new layout of it", () => {
  const offered = trackOptions(namesOf(known), "varnholt ring  night");
  expect(offered.at(-1)).toMatchObject({
    label: "Varnholt Ring, night",
    detail: "new layout of Varnholt Ring",
  });
  expect(trackOptions(namesOf(known), "Varnholt Ringwick")).toHaveLength(2);
  expect(trackOptions(namesOf(known), "Varnholt Ring, SHORT")).toHaveLength(2);
});

test("a name that will not do says why and what would", () => {
  expect(problemOfName("  ", "car", "club hatch")).toMatchObject({ wrong: "The car needs a name" });
  expect(problemOfName("x".repeat(121), "car", "club hatch")?.wrong).toContain("121 characters");
  expect(problemOfName("x".repeat(120), "car", "club hatch")).toBeUndefined();
});
