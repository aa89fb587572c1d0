import { expect, it } from "vitest";
import { comboName, layoutName } from "#domain";

const track = { name: "Marlow Fen" };

it("a layout is named only where it has a name of its own", () => {
  expect(layoutName(track, { name: "short" })).toBe("Marlow Fen, short");
  expect(layoutName(track, { name: "" })).toBe("Marlow Fen");
});

it("a combo is named by its track first, then its car", () => {
  expect(comboName({ track, layout: { name: "short" }, car: { name: "club hatch" } })).toBe(
    "Marlow Fen, short · club hatch",
  );
});
