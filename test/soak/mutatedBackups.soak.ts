import { expect, test } from "vitest";
import { believeNothing } from "../support/believeNothing.ts";

const seed = Number(process.env["LAP_LEDGER_SEED"] ?? 20_261_128);
const files = Number(process.env["LAP_LEDGER_FILES"] ?? 10_000);

test(`of ${files} mutated backups none is believed in anything wrong, and none throws (seed ${seed})`, async () => {
  const { threw, wrong, ...seen } = await believeNothing(seed, files);
  process.stdout.write(`${JSON.stringify({ seed, files, ...seen })}\n`);
  expect({ threw: threw.length, wrong: wrong.length, first: [...threw, ...wrong].slice(0, 20) }).toEqual({
    threw: 0,
    wrong: 0,
    first: [],
  });
});
