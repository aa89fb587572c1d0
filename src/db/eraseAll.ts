import { Dexie } from "dexie";
import { deleteDatabase } from "./shelvedLogbooks.ts";

/** Every database of the app begins with this: the shelf has the name itself, logbooks have more behind it. */
const family = "lap-ledger";

/** Names of the app's databases that are there now. */
export async function databasesThere(): Promise<string[]> {
  const all = await Dexie.getDatabaseNames();
  return all.filter((name) => name === family || name.startsWith(`${family}-`)).sort();
}

/**
 * Deletes every database of the app, the list of logbooks last. A tab that keeps one open is waited for.
 * @param onBlocked told of it while such a tab holds things up, and when it goes on
 */
export async function eraseDatabases(onBlocked: (isBlocked: boolean) => void): Promise<void> {
  const logbooksFirst = (await databasesThere()).sort((a, b) => b.length - a.length);
  for (const name of logbooksFirst) {
    await deleteDatabase(name, () => onBlocked(true));
    onBlocked(false);
  }
}
