import { newestSchema } from "#db";
import { type AsideRow, noRows, practiceDay } from "#domain";
import { browserSha256, fileName, saveFile, writeBackup } from "#files";
import type { OpenLogbook } from "#live";
import { useNotices } from "#state/notices.ts";

/** Hands the rows set aside to the browser's downloads, as a backup that holds nothing else. */
export async function saveAside(
  { clock, zone }: OpenLogbook["surroundings"],
  title: string,
  aside: readonly AsideRow[],
): Promise<void> {
  const about = { title, schema: newestSchema, sha256: browserSha256() };
  const file = fileName(`${title} set aside`, practiceDay(clock(), zone(), 0), "json");
  saveFile(file, await writeBackup({ ...noRows, aside }, about));
  const text = `Rows set aside handed to this browser’s downloads as ${file}.`;
  useNotices.getState().say({ kind: "done", text, actions: [] });
}
