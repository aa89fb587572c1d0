import "fake-indexeddb/auto";
import { deleteDatabase, dump, idMaker, newestSchema, restoreAsNew } from "#db";
import { browserSha256, writeBackup } from "#files";
import { readSource } from "../../src/live/errands/readSource.ts";
import { aFullLogbook } from "./aFullLogbook.ts";
import { diceFrom, mutateBackup } from "./mutateBackup.ts";
import { useEverything } from "./useEverything.ts";
import { whatIsWrong } from "./whatIsWrong.ts";

/** What came of mutated backups. */
export interface Believed {
  /** How many were signed again, refused, taken without a word, and taken in part. */
  readonly signed: number;
  readonly refused: number;
  readonly whole: number;
  readonly partly: number;
  /** Files that threw somewhere: "mutation 17, reading: …". */
  readonly threw: readonly string[];
  /** Files of which a wrong row was taken. */
  readonly wrong: readonly string[];
}

/** The clock of the logbook that is mutated, a day on. */
const now = Date.UTC(2026, 2, 11, 18);
const tools = { clock: () => now, newId: idMaker(() => now) };

/** Mutates the backup of a small full logbook so many times, reads each file as a restore does, and uses what was taken. */
export async function believeNothing(seed: number, files: number): Promise<Believed> {
  const { book } = await aFullLogbook();
  const head = { title: "Mine", schema: newestSchema, sha256: browserSha256() };
  const text = await writeBackup(await dump(book), head);
  const dice = diceFrom(seed);
  const seen = { signed: 0, refused: 0, whole: 0, partly: 0 };
  const threw: string[] = [];
  const wrong: string[] = [];
  for (let n = 0; n < files; n += 1) {
    const mutated = mutateBackup(text, dice);
    if (mutated.isSigned) seen.signed += 1;
    let step = "reading";
    try {
      const read = await readSource(new Blob([mutated.text]), now);
      if (!read.ok) {
        seen.refused += 1;
        if (!/^\S.*\.$/s.test(read.problem.wrong)) threw.push(`mutation ${n}, no reason given`);
        continue;
      }
      const { rows, bad } = read.alone;
      seen[bad.length === 0 ? "whole" : "partly"] += 1;
      if (bad.some(({ why }) => why.trim() === "")) threw.push(`mutation ${n}, a row without a reason`);
      const [first, ...more] = whatIsWrong(rows, now);
      if (first !== undefined) wrong.push(`mutation ${n}, ${first}, and ${more.length} more`);
      step = "restoring";
      const name = `mutated-${seed}-${n}`;
      const restored = await restoreAsNew(rows, { name, ...tools });
      try {
        step = "using";
        const [none] = await useEverything(restored);
        if (none !== undefined) wrong.push(`mutation ${n}, not a number: ${none}`);
      } finally {
        restored.close();
        await deleteDatabase(name);
      }
    } catch (error) {
      threw.push(`mutation ${n}, ${step}: ${error instanceof Error ? error.stack : String(error)}`);
    }
  }
  book.close();
  return { ...seen, threw, wrong };
}
