import { newestSchema } from "#db";
import { browserSha256, writeBackup } from "#files";
import { makeBook } from "./book.ts";
import { truthOf } from "./truth.ts";

/** Title of the demo as a logbook. */
export const demoTitle = "Demo: a club racer's twelve weeks";

/** The two files of the demo: the logbook as a backup, and the truth about it. The same bytes every time. */
export async function generate(): Promise<{ readonly logbook: string; readonly truth: string }> {
  const book = makeBook();
  const logbook = await writeBackup(book.rows, {
    title: demoTitle,
    schema: newestSchema,
    sha256: browserSha256(),
  });
  return { logbook, truth: `${JSON.stringify(truthOf(book), null, 1)}\n` };
}
