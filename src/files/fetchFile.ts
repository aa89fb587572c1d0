import type { Reading } from "#domain";

/** Fetches a file that lies beside the app, such as the demo logbook; says so when that cannot be done. */
export async function fetchFile(address: string): Promise<Reading<{ readonly source: Blob }>> {
  const source = await fetched(address);
  if (source !== undefined) return { ok: true, source };
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

async function fetched(address: string): Promise<Blob | undefined> {
  try {
    const answer = await fetch(address);
    return answer.ok ? await answer.blob() : undefined;
  } catch (error) {
    if (error instanceof TypeError) return undefined;
    throw error;
  }
}
