import { expect, test } from "vitest";
import {
  gainDigits,
  sayDecibels,
  sayGain,
  sayGainChosen,
  sayHeadroom,
  sayNoGain,
  sayRimForce,
  sayTimeAtLimit,
  waveCompares,
  waveSays,
  whyGainIsARange,
} from "#words";

test("a gain is told in whole percent and never as more than was worked out", () => {
  expect(gainDigits(56.25)).toBe("56");
  expect(gainDigits(56.999)).toBe("56");
  expect(gainDigits(0.5 * 60.000_000_000_01)).toBe("30");
  expect(gainDigits(29.999_999_999_99)).toBe("30");
  expect(gainDigits(4.57)).toBe("4.5");
  expect(sayGain({ low: 39.03, high: 45.65 })).toBe("39 to 45 %");
  expect(sayGain({ low: 60.2, high: 60.2 })).toBe("60 %");
});

test("headroom is told in decibels and as how much stronger a force may get", () => {
  // 20·log₁₀(1.25) is 1.938 dB and 20·log₁₀(2) is 6.021 dB (ISO 80000-3).
  expect(sayDecibels(1.938)).toBe("1.9 dB");
  expect(sayDecibels(-1.938)).toBe("−1.9 dB");
  expect(sayDecibels(-0.01)).toBe("0.0 dB");
  expect(sayHeadroom(1.938_200_260_161_13)).toBe("a force up to 25 % stronger still comes through");
  expect(sayHeadroom(6.020_599_913_279_624)).toBe("a force up to 100 % stronger still comes through");
  expect(sayHeadroom(0)).toBe("nothing stronger comes through");
  expect(sayHeadroom(-2)).toBe("nothing stronger comes through");
});

test("where nothing can be worked out it is said what to do instead", () => {
  const share = { because: "out of range", measure: "share", from: 0, to: 0.3 } as const;
  expect(sayNoGain({ because: "peak cut off" })).toMatch(/cut off.*Look how long the force is at the limit/);
  expect(sayNoGain({ ...share, value: 0 })).toMatch(/Use the strongest force/);
  expect(sayNoGain({ ...share, value: 0.3 })).toMatch(/From 30 %.*Turn the gain down/);
  expect(sayNoGain({ ...share, measure: "wanted share", value: 0 })).toBe(
    "The wanted share must be more than 0 % and under 30 %.",
  );
  expect(sayNoGain({ ...share, measure: "reserve", to: 1, value: 1 })).toMatch(/under 100 %/);
  expect(sayNoGain({ because: "not above zero", measure: "gain", value: 0 })).toMatch(
    /^At a gain of 0 % .* there is nothing to work out\./,
  );
  expect(sayNoGain({ because: "not above zero", measure: "peak", value: 0 })).toMatch(/must be more than 0/);
});

test("a range says why it is one, and where to begin", () => {
  expect(whyGainIsARange("45", false)).toMatch(/cannot be seen.*outside it\. Begin at 45 %.*small steps\.$/);
  expect(whyGainIsARange("75", true)).toMatch(/Begin at 75 %.*small steps, at most 5 points at a time\.$/);
});

test("a gain outside what was worked out is told so, and one on the way as a step", () => {
  const range = { low: 39.03, high: 45.65 };
  expect(sayGainChosen(39, 60, range)).toBeUndefined();
  expect(sayGainChosen(45, 60, range)).toBeUndefined();
  expect(sayGainChosen(52, 60, range)).toBe(
    "A step on the way from 60 % to what was worked out: 39 to 45 %.",
  );
  expect(sayGainChosen(65, 60, range)).toBe("Worked out: 39 to 45 %. It is stored as typed.");
  expect(sayGainChosen(30, 60, range)).toBe("Worked out: 39 to 45 %. It is stored as typed.");
});

test("a gain far up from the gain now is told so, worked out or not", () => {
  const range = { low: 89, high: 100 };
  expect(sayGainChosen(75, 70, range)).toBe(
    "A step on the way from 70 % to what was worked out: 89 to 100 %.",
  );
  expect(sayGainChosen(90, 70, range)).toBe(
    "It is 20 points up at once: smaller steps are safer for your hands.",
  );
  expect(sayGainChosen(110, 70, range)).toMatch(
    /^Worked out: 89 to 100 %\. It is stored as typed\. It is 40 points/,
  );
});

test("force at the hands is told with what weighs as much", () => {
  // 100 N and 9.80665 m/s²: 10.2 kg.
  expect(sayRimForce(100)).toBe("100 N at the hands, as heavy as 10 kg");
  expect(sayRimForce(33.3)).toBe("33 N at the hands, as heavy as 3.4 kg");
});

test("what the limit does to a turn is said at each gain, and once what is true of both", () => {
  const [cut, whole] = [
    { gain: "72 %", share: 0.05 },
    { gain: "50 %", share: 0 },
  ];
  expect(waveSays(cut)).toMatch(
    /^At 72 % what lies over the limit is cut off: bumps in the middle of a turn vanish/,
  );
  expect(waveCompares(whole, { gain: "56 %", share: 0 })).toEqual([
    "At 50 % and 56 % all of it comes through, the bumps in the middle of a turn too.",
  ]);
  expect(waveCompares(cut, whole)).toEqual([
    waveSays(cut),
    "At 50 % all of it comes through, the bumps in the middle of a turn too.",
  ]);
  expect(waveCompares(cut, { gain: "68 %", share: 0.01 })[1]).toBe("At 68 % less of it is cut off.");
  expect(waveCompares(cut, { gain: "80 %", share: 0.1 })[1]).toBe("At 80 % more of it is cut off.");
  expect(waveCompares(cut, { gain: "68 %", share: 0.01, time: { low: 0.00895, high: 0.01663 } })[1]).toBe(
    "At 68 % less of it is cut off, about 0.9 to 2 % of the time.",
  );
});

test("a typical time at the limit is told no finer than it is known", () => {
  expect(sayTimeAtLimit({ low: 0.0098, high: 0.0102 })).toBe("about 1 % of the time");
  expect(sayTimeAtLimit({ low: 0.106, high: 0.142 })).toBe("about 11 to 14 % of the time");
  expect(sayTimeAtLimit({ low: 0.0002, high: 0.004 })).toBe("up to 0.4 % of the time");
  expect(sayTimeAtLimit({ low: 1e-9, high: 0.0002 })).toBe("less than 0.1 % of the time");
});
