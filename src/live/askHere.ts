import type { Ask } from "./ask.ts";
import { runJob } from "./jobs/jobs.ts";

/** Computes on the spot, for tests. Apart from `ask.ts`, or the page would begin with all that computes. */
export const askHere: Ask = (book, job, details) => runJob(book, job, details);
