import { openAsItIs } from "./openAsItIs.ts";

/**
 * Version number the browser keeps for a database, or undefined where there is none; makes and changes nothing.
 * Asked before Dexie opens it, because Dexie opens a newer database without a word and adds what it misses there.
 */
export async function nativeVersion(name: string): Promise<number | undefined> {
  const database = await openAsItIs(name);
  database?.close();
  return database?.version;
}
