import { idMaker, type Logbook, openLogbook } from "#db";
import type { Answer, Question } from "./ask.ts";
import { runJob } from "./jobs/jobs.ts";

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
  let answer: Answer;
  try {
    answer = { number, result: await runJob(await bookNamed(logbook), job, details as never) };
  } catch (error) {
    answer = { number, fault: error instanceof Error ? error.message : String(error) };
  }
  postMessage(answer);
});
