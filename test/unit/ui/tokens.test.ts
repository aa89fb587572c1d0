import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { contrast } from "../../support/contrast.ts";

const css = readFileSync(new URL("../../../src/ui/tokens.css", import.meta.url), "utf8");
const inks = [...css.matchAll(/--([a-z-]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/g)];
const themes = {
  light: Object.fromEntries(inks.map(([, name, light]) => [name, light])),
  dark: Object.fromEntries(inks.map(([, name, , dark]) => [name, dark])),
};

const TEXT = 4.5; // WCAG 2.2, success criterion 1.4.3
const LINE = 3; // success criterion 1.4.11
const pairs: [string, string, number][] = [
  ...["ink", "soft", "accent", "gain", "loss", "caution"].flatMap((ink): [string, string, number][] => [
    [ink, "paper", TEXT],
    [ink, "sheet", TEXT],
  ]),
  ["paper", "accent", TEXT], // words on the primary button
  ["ink", "band", TEXT],
  ["ink", "band-pale", TEXT],
  ["field", "paper", LINE],
  ["field", "sheet", LINE],
  ["accent", "band", LINE], // edge of a band, PB line across it
  ["accent", "band-pale", LINE],
  ["soft", "band", LINE],
];

describe.each(["light", "dark"] as const)("%s theme", (theme) => {
  it.each(pairs)("%s on %s reaches %d", (one, other, limit) => {
    const [a, b] = [themes[theme][one], themes[theme][other]];
    expect(a, one).toBeDefined();
    expect(b, other).toBeDefined();
    expect(contrast(a ?? "", b ?? "")).toBeGreaterThanOrEqual(limit);
  });
});

it("reads every ink of the token file", () => {
  expect(inks).toHaveLength([...css.matchAll(/light-dark\(/g)].length);
  expect(inks.length).toBeGreaterThan(10);
});
