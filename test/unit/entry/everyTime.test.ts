import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatLapTime } from "#domain";
import { parseEntry, readTime } from "#entry";
import { aContext } from "./aContext.ts";

const two = (value: number) => String(value).padStart(2, "0");
const hourMs = 3_600_000;

/** Milliseconds known to some decimals, evenly over the number of digits. */
const aTime = (longest: number) =>
  fc
    .tuple(
      fc.integer({ min: 100, max: longest }),
      fc.integer({ min: 0, max: 7 }),
      fc.integer({ min: 0, max: 3 }),
    )
    .map(([ms, cut, decimals]) => {
      const unit = 10 ** (3 - decimals);
      const size = Math.max(100, Math.floor(ms / 10 ** cut));
      return { ms: Math.max(1, Math.floor(size / unit)) * unit, decimals };
    });

interface Time {
  readonly ms: number;
  readonly decimals: number;
}

function partsOf({ ms, decimals }: Time) {
  const fraction = String(ms % 1000)
    .padStart(3, "0")
    .slice(0, decimals);
  return {
    minutes: Math.floor(ms / 60_000),
    seconds: Math.floor(ms / 1000) % 60,
    allSeconds: Math.floor(ms / 1000),
    fraction,
    point: decimals > 0 ? `.${fraction}` : "",
  };
}

/** Every form a time can be written in, where that form can hold it. */
const forms: Record<string, (time: Time) => string | undefined> = {
  ledger: ({ ms, decimals }) => (ms < 60_000 && decimals === 0 ? undefined : formatLapTime(ms, decimals)),
  hours: (time) => {
    const { minutes, seconds, point } = partsOf(time);
    return `${Math.floor(minutes / 60)}:${two(minutes % 60)}:${two(seconds)}${point}`;
  },
  minutes: (time) => {
    const { minutes, seconds, point } = partsOf(time);
    return `${minutes}:${two(seconds)}${point}`;
  },
  comma: (time) => {
    const { minutes, seconds, point } = partsOf(time);
    return `${minutes}:${two(seconds)}${point.replace(".", ",")}`;
  },
  primes: (time) => {
    const { minutes, seconds, fraction } = partsOf(time);
    return `${minutes}'${two(seconds)}"${fraction}`;
  },
  points: (time) => {
    const { minutes, seconds, point } = partsOf(time);
    return point === "" ? undefined : `${minutes}.${two(seconds)}${point}`;
  },
  seconds: (time) => {
    const { allSeconds, point } = partsOf(time);
    return point === "" ? undefined : `${allSeconds}${point}`;
  },
};

const digits = (time: Time) => {
  const { minutes, seconds, fraction } = partsOf(time);
  const clock = minutes < 60 ? String(minutes) : `${Math.floor(minutes / 60)}${two(minutes % 60)}`;
  return `${clock}${two(seconds)}${fraction}`;
};

describe("every time from 0.1 s to 24 h", () => {
  it.each(Object.keys(forms))("comes back from the form %s, with its decimals", (name) => {
    fc.assert(
      fc.property(aTime(24 * hourMs), (time) => {
        const text = forms[name]?.(time);
        if (text !== undefined) expect(readTime(text)).toEqual({ ok: true, ...time, form: "full" });
      }),
      { seed: 21, numRuns: 2000 },
    );
  });

  it("comes back from its digits", () => {
    fc.assert(
      fc.property(aTime(24 * hourMs), (time) => {
        if (time.decimals === 0) return;
        const reading = readTime(digits(time), { displayDecimals: time.decimals });
        expect(reading).toEqual({ ok: true, ...time, form: "digits" });
      }),
      { seed: 22, numRuns: 2000 },
    );
  });

  it("comes back from a whole line with remarks and a note", () => {
    fc.assert(
      fc.property(aTime(hourMs), fc.constantFrom("", "f", " f@5", " c@3t"), (time, remarks) => {
        const text = `${forms["minutes"]?.(time)}${remarks} / note`;
        expect(parseEntry(text, aContext())).toMatchObject({ ok: true, lap: { ...time, note: "note" } });
      }),
      { seed: 23 },
    );
  });
});

describe("a short form", () => {
  it("is the driven lap or refused, while the lap lies within 5 s (30 s) of the usual", () => {
    const usual = fc.integer({ min: 30_000, max: 600_000 });
    fc.assert(
      fc.property(usual, fc.integer({ min: -4_999, max: 4_999 }), (nearMs, off) => {
        const ms = nearMs + off;
        const reading = readTime(digits({ ms, decimals: 3 }).slice(-4), { nearMs });
        expect(reading.ok ? reading.ms : "refused").toBe(Math.abs(off) <= 3_000 ? ms : "refused");
      }),
      { seed: 24, numRuns: 1000 },
    );
    fc.assert(
      fc.property(usual, fc.integer({ min: -29_999, max: 29_999 }), (nearMs, off) => {
        const ms = nearMs + off;
        const reading = readTime(digits({ ms, decimals: 3 }).slice(-5), { nearMs });
        expect(reading.ok ? reading.ms : "refused").toBe(Math.abs(off) <= 20_000 ? ms : "refused");
      }),
      { seed: 25, numRuns: 1000 },
    );
  });
});
