import { expect, it } from "vitest";
import { isWholeDigest } from "#stats";
import { aDigest } from "../period/manySessions.ts";

const digests = [
  aDigest(0, []),
  aDigest(1, [83_400]),
  aDigest(2, [83_400, 83_500, [undefined, "off"], 83_450, 83_420, 83_410, 83_600], { tyres: "soft" }),
  aDigest(3, [83_400], { guest: "Ada" }),
];

it("takes every digest that is made, as the browser gives it back", () => {
  for (const digest of digests) expect(isWholeDigest(structuredClone(digest))).toBe(true);
});

it("takes none of which one field holds what no figure can be made of", () => {
  const wrong = [42.5, "never", null, {}, [], [null], Number.NaN, new Uint8Array(99)];
  for (const digest of digests)
    for (const field of Object.keys(digest) as (keyof typeof digest)[])
      for (const value of wrong) {
        const isSameKind =
          (typeof value === "number" && typeof digest[field] === "number" && !Number.isNaN(value)) ||
          (typeof value === "number" && (field === "targetMs" || field === "sittingMs") && value === 42.5) ||
          (typeof value === "string" && typeof digest[field] === "string" && field !== "date") ||
          (Array.isArray(value) && value.length === 0 && Array.isArray(digest[field]));
        const said = `${field}: ${String(value)}`;
        if (!isSameKind) expect(isWholeDigest({ ...digest, [field]: value }), said).toBe(false);
      }
});

it("takes none of which a field is missing or its lists do not fit each other", () => {
  const [, , many] = digests;
  for (const { field } of [{ field: "times" }, { field: "pace" }, { field: "date" }, { field: "counts" }])
    expect(isWholeDigest({ ...many, [field]: undefined }), field).toBe(false);
  for (const field of ["places", "worths", "exact"])
    expect(isWholeDigest({ ...many, [field]: new Uint8Array(2) }), field).toBe(false);
  expect(isWholeDigest({ ...many, pace: { ...many?.pace, median: "fast" } })).toBe(false);
  expect(isWholeDigest(undefined)).toBe(false);
});

it("takes none of which a part within a field is no longer what it was", () => {
  const [, , many] = digests;
  const [best] = many?.bestCandidates ?? [];
  const [facts] = many?.runFacts ?? [];
  const counts = { ...many?.counts };
  const wrong: object[] = [
    ...["kind", "sessionId", "at", "ms", "decimals"].map((part) => ({
      bestClean: { ...best, [part]: null },
    })),
    ...["effort", "surface"].map((part) => ({ runFacts: [facts, { ...facts, [part]: 3 }] })),
    ...["laps", "exactLaps"].map((part) => ({ pace: { ...many?.pace, [part]: undefined } })),
    { pace: { ...many?.pace, consistency: undefined } },
    { pace: { ...many?.pace, consistency: { known: true, reason: {} } } },
    { pace: { ...many?.pace, consistency: { known: false, value: {} } } },
    { counts: { ...counts, pace: "six" } },
    { counts: { ...counts, driven: undefined } },
    { sectorCount: 2 },
    { date: 20_260_101 },
    { odd: [0, "one"] },
  ];
  for (const part of wrong) expect(isWholeDigest({ ...many, ...part }), JSON.stringify(part)).toBe(false);
});
