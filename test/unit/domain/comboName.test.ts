import { expect, it } from "vitest";
import { comboName, layoutName } from "#domain";

const track = { name: "Varnholt Ring" };

it("a layout is named only where it has a name of its own", () => {
  expect(layoutName(track, { name: "short" })).toBe("Varnholt Ring, short");
  expect(layoutName(track, { name: "" })).toBe("Varnholt Ring");
});

it("a combo is named by its track first, then its car", () => {
  expect(comboName({ track, layout: { name: "short" }, car: { name: "club hatch" } })).toBe(
    "Varnholt Ring, short · club hatch",
  );
});
