import { describe, expect, it } from "vitest";
import { contrast, luminance } from "../../support/contrast.ts";
import reference from "./wcag-contrast.json" with { type: "json" };

describe("contrast by the formula of WCAG 2.2", () => {
  it.each(reference.expected.ratios)("$a on $b", ({ a, b, ratio, printed }) => {
    expect(Math.abs(contrast(a, b) - ratio)).toBeLessThan(1e-9);
    expect(contrast(b, a)).toBe(contrast(a, b));
    if (printed !== undefined) expect(Math.abs(contrast(a, b) - printed)).toBeLessThan(0.0051);
  });

  it.each(reference.expected.luminance)("luminance of $colour", ({ colour, L }) => {
    expect(Math.abs(luminance(colour) - L)).toBeLessThan(1e-9);
  });

  it("4.48 does not pass for 4.5", () => {
    expect(contrast("#777777", "#ffffff")).toBeLessThan(reference.expected.limits.text);
  });
});
