import { idMaker, type Logbook, openLogbook } from "#db";
import { runJob } from "./jobs/jobs.ts";
import type { Answer, Question } from "./workerMessages.ts";

const open = new Map<string, Promise<Logbook>>();

/** One connection for each logbook asked about; one that was closed is opened again. */
async function bookNamed(name: string): Promise<Logbook> {
  const known = await open.get(name)?.catch(() => undefined);
  if (known?.status.get().kind === "ok") return known;
  const fresh = openLogbook({ name, clock: Date.now, newId: idMaker(Date.now), expect: "old" });
  open.set(name, fresh);
  return fresh;
}

addEventListener("message", async ({ data }: MessageEvent<Question>) => {
  const { number, logbook, job, details } = data;
  let book: Logbook | undefined;
  let answer: { readonly result: unknown } | { readonly fault: string };
  try {
    book = await bookNamed(logbook);
    answer = { result: await runJob(book, job, details as never) };
  } catch (error) {
    answer = { fault: error instanceof Error ? error.message : String(error) };
  }
  const unreadable = book?.unreadable.get() ?? [];
  postMessage({ number, unreadable, ...answer } satisfies Answer);
  // The page sets them aside; those that cannot be read stay named.
  book?.unreadable.forget(unreadable.filter(({ aside }) => aside !== undefined));
});
