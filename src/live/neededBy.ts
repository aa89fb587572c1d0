import { sizeOfRows } from "#files";

/** Bytes that an errand stores, where it is told from its details: the rows of its file. */
export async function neededBy(details: unknown): Promise<number | undefined> {
  const source = (details as { readonly source?: Blob } | null)?.source;
  // A file that has gone meanwhile leaves the fault itself to be said.
  return source === undefined ? undefined : sizeOfRows(source).catch(() => undefined);
}
