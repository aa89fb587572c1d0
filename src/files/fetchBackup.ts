import type { Reading } from "#domain";
import { type Backup, type KnownSchemas, readBackup } from "./backup.ts";

/** Reads a backup that lies beside the app, such as the demo logbook; says so when it cannot be fetched. */
export async function fetchBackup(
  address: string,
  known: KnownSchemas,
): Promise<Reading<{ readonly backup: Backup }>> {
  const text = await fetchedText(address);
  if (text !== undefined) return readBackup(text, known);
  return {
    ok: false,
    problem: {
      at: 0,
      length: 0,
      wrong: "The file could not be fetched.",
      right: "Try again when the connection is back.",
    },
  };
}

async function fetchedText(address: string): Promise<string | undefined> {
  try {
    const answer = await fetch(address);
    return answer.ok ? await answer.text() : undefined;
  } catch (error) {
    if (error instanceof TypeError) return undefined;
    throw error;
  }
}
