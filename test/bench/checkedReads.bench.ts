/** The check of every row that is read, beside the copy that a database must make of it anyway: 100,000 laps in 10,000 runs. */
import { bench, describe } from "vitest";
import type { Run } from "#domain";
import { isSound } from "../../src/db/edge/sift.ts";
import { backupWithLaps } from "./manyLaps.ts";

const { runs } = JSON.parse(await backupWithLaps(100_000)).tables as { readonly runs: readonly Run[] };

describe("100,000 laps read", () => {
  bench("copied out of the store", () => {
    structuredClone(runs);
  });

  bench("copied and checked", () => {
    for (const run of structuredClone(runs)) if (!isSound("runs", run)) throw new Error("a sound run");
  });
});
