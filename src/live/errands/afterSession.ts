import { backupFolder, dump, forgetOldCopies, keepCopy, markOfBook, noteBackup, setBackupFolder } from "#db";
import { canPack, datedName, mayWrite, newestStamp, writeDated } from "#files";
import type { Errand, ErrandTools } from "./errand.ts";
import { liveCounts, packRows } from "./packRows.ts";

/** Nothing to say: the logbook is the open one. */
export type AfterSession = null;

const notAllowed = "the browser asks again for leave to write into the folder";

/**
 * What is done at rest after a session: the state of the logbook is kept on the shelf, and written into the folder
 * chosen for automatic backup. Nothing is done twice for the same rows. A folder that cannot be written to is noted
 * with its reason; a state that cannot be kept is thrown, after the folder has had its turn.
 */
export const afterSession: Errand<AfterSession, null> = async (_, tools) => {
  const { book, shelf } = tools;
  const logbook = await shelf.logbooks.get(book.name);
  if (logbook === undefined || logbook.kind === "demo") return null;
  // Before the rows: what changes in between is then due again.
  const mark = await markOfBook(book);
  const rows = await dump(book);
  if (newestStamp(rows) === 0) return null;
  const bytes = await packRows(rows, logbook.title);
  await writeIntoFolder(tools, logbook.title, bytes);
  await keepCopy(shelf, {
    logbook: book.name,
    title: logbook.title,
    why: "session",
    ...(mark !== undefined && { mark }),
    ...liveCounts(rows),
    packed: bytes,
  });
  await forgetOldCopies(shelf, logbook);
  return null;
};

async function writeIntoFolder(
  { book, shelf }: ErrandTools,
  title: string,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<void> {
  const folder = await backupFolder(shelf, book.name);
  if (folder === undefined) return;
  const { stopped: _, ...going } = folder;
  const now = shelf.clock();
  const name = datedName(title, folder.tag, now, canPack() ? "json.gz" : "json");
  const why = await tried(async () => {
    if (!(await mayWrite(folder.handle))) return notAllowed;
    await writeDated(folder.handle, { name, tag: folder.tag }, bytes);
    return undefined;
  });
  if (why !== undefined) return setBackupFolder(shelf, { ...going, stopped: why });
  await setBackupFolder(shelf, { ...going, lastGoodAt: now, lastFile: name });
  await noteBackup(shelf, book.name);
}

/** Why something failed, in words: the browser names its reasons, the driver reads what they mean. */
async function tried(work: () => Promise<string | undefined>): Promise<string | undefined> {
  try {
    return await work();
  } catch (error) {
    const name = error instanceof DOMException ? error.name : "";
    if (name === "NotFoundError") return "the folder has been moved or deleted";
    if (name === "NotAllowedError") return notAllowed;
    if (name === "QuotaExceededError") return "there is no room left where the folder is";
    return `the browser could not write the file (${name || String(error)})`;
  }
}
