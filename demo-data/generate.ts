import { newestSchema } from "#db";
import { browserSha256, writeBackup } from "#files";
import { makeBook } from "./book.ts";
import { pictureOf } from "./picture.ts";
import { truthOf } from "./truth.ts";

/** Title of the demo as a logbook. */
export const demoTitle = "Demo: a club racer's twelve weeks";

/** A file of the demo as text, the same bytes every time. */
const asText = (value: object) => `${JSON.stringify(value, null, 1)}\n`;

/** The files of the demo: the logbook as a backup, the truth about it, and the picture that the first page draws of it. */
export async function generate(): Promise<{
  readonly logbook: string;
  readonly truth: string;
  readonly picture: string;
}> {
  const book = makeBook();
  const logbook = await writeBackup(book.rows, {
    title: demoTitle,
    schema: newestSchema,
    sha256: browserSha256(),
  });
  return { logbook, truth: asText(truthOf(book)), picture: asText(pictureOf(book)) };
}
