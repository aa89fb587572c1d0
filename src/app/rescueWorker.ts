import { rawRows } from "../db/rawRows.ts";
import { writeBackup } from "../files/backup.ts";
import { fileName } from "../files/fileName.ts";
import { browserSha256 } from "../files/sha256.ts";

/** Every logbook of this browser as the text of a backup, by nothing that opens, migrates or checks one. */
async function rescue(): Promise<void> {
  const all = await indexedDB.databases();
  const names = all.flatMap(({ name }) => (name?.startsWith("lap-ledger-") ? [name] : [])).sort();
  if (names.length === 0) postMessage({ text: "No logbook is stored in this browser." });
  for (const [index, name] of names.entries()) {
    const { rows, schema } = await rawRows(name);
    const title = `Rescued logbook ${index + 1}`;
    const text = await writeBackup(rows, { title, schema, sha256: browserSha256() });
    const today = new Date().toISOString().slice(0, 10);
    postMessage({ file: fileName(`Lap Ledger ${title}`, today, "json"), text });
  }
}

rescue().catch((error: unknown) =>
  postMessage({ text: `Backup not saved: ${error instanceof Error ? error.message : String(error)}` }),
);
