import fc from "fast-check";
import { expect, test } from "vitest";
import { fileName } from "#files";

const on = "2026-10-14";

test("a title becomes a short name with the date", () => {
  expect(fileName("Evenings at Märlow Fen", on, "json")).toBe("Evenings-at-Märlow-Fen-2026-10-14.json");
});

const bad: readonly (readonly [string, string])[] = [
  ["../../etc/passwd", "etc-passwd-2026-10-14.json"],
  ['a/b\\c:d*e?f"g<h>i|j', "a-b-c-d-e-f-g-h-i-j-2026-10-14.json"],
  ["nul", "lap-ledger-nul-2026-10-14.json"],
  ["...", "lap-ledger-2026-10-14.json"],
  ["", "lap-ledger-2026-10-14.json"],
  ["good\u202Egpj.exe", "good-gpj-exe-2026-10-14.json"],
];
for (const [title, name] of bad)
  test(`the title ${JSON.stringify(title)} gives a safe name`, () => {
    expect(fileName(title, on, "json")).toBe(name);
  });

test("whatever the title, the name is short and holds no sign a system gives a meaning", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", maxLength: 300 }), (title) => {
      const name = fileName(title, on, "json");
      expect(name).toMatch(/^[\p{L}\p{M}\p{N}-]+-2026-10-14\.json$/u);
      expect([...name].length).toBeLessThanOrEqual(90);
    }),
    { seed: 3 },
  );
});
