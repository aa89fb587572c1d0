import { freshenDigests, type Logbook, preferences } from "#db";
import { digestMaker } from "../digestMaker.ts";
import type { JobRun } from "./job.ts";

/**
 * Makes and keeps the figures of every session that waits for them, after a restore above all. Gives how many there
 * were. A logbook that may not be written is left alone.
 */
export const runFreshen: JobRun<null, number> = async (book) => {
  if (!("database" in book)) return 0;
  const maker = digestMaker(await preferences(book));
  let made = 0;
  for (let last = -1; last !== 0; made += last) last = await freshenDigests(book as Logbook, maker);
  return made;
};
