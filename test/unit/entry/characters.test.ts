import { describe, expect, it } from "vitest";
import { parseEntry, readTime } from "#entry";
import { aContext } from "./aContext.ts";

const invisible: [string, string][] = [
  ["\u00a0", "no-break space"],
  ["\u202f", "narrow no-break space"],
  ["\u200b", "zero-width space"],
  ["\ufeff", "byte order mark"],
  ["\u00ad", "soft hyphen"],
  ["\u200e", "left-to-right mark"],
  ["\u200f", "right-to-left mark"],
  ["\u2066", "direction isolate"],
  ["\u2069", "direction isolate"],
  ["\t", "tab"],
];

describe("characters outside the plain ones", () => {
  it.each(["１：２３．４５６", "١:٢٣.٤٥٦", "۱:۲۳.۴۵۶", "१:२३.४५६", "1’23”456", "1′23″456", "1‘23“456"])(
    "reads %s",
    (text) => {
      expect(readTime(text)).toMatchObject({ ok: true, ms: 83_456 });
    },
  );

  it.each(["1²", "①:23.4", "½", "1:23٫4", "1:23،4", "1:23·4", "𝟏:23.4", "1:2３²"])(
    "refuses %s by name",
    (text) => {
      const reading = readTime(text);
      expect(reading.ok).toBe(false);
      if (!reading.ok) expect(reading.problem.wrong).toMatch(/The character “.+” .* is not understood/);
    },
  );

  it("does not take a look-alike letter for a remark", () => {
    expect(parseEntry("1:23.456 \u212a", aContext()).ok).toBe(false);
  });

  it.each(invisible)("%j is dropped at the ends, and refused by name inside", (sign, name) => {
    for (const text of [`${sign}1:23.456`, `1:23.456${sign}`, `${sign}1:23.456${sign}${sign}`])
      expect(readTime(text)).toEqual({ ok: true, ms: 83_456, decimals: 3, form: "full" });
    const inside = readTime(`1:23${sign}.456`);
    expect(inside.ok).toBe(false);
    if (inside.ok) return;
    expect(inside.problem).toMatchObject({ at: 4, length: 1, right: "Write 1:23.456." });
    expect(inside.problem.wrong).toBe(`There is a ${name} after “1:23”.`);
  });

  it("keeps the place of a fault behind characters of two units", () => {
    const reading = readTime("1:2😀3.4");
    expect(reading).toMatchObject({ ok: false, problem: { at: 3, length: 2 } });
  });

  it("gives the same lap however the quotes were changed while typing", () => {
    const plain = parseEntry("1'23\"456 f", aContext());
    expect(parseEntry("1’23”456 F", aContext())).toEqual(plain);
    expect(plain.ok).toBe(true);
  });
});
