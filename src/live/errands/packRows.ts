import { newestSchema } from "#db";
import type { AllRows } from "#domain";
import { browserSha256, packed, writeBackup } from "#files";

/** Rows as the bytes of a backup file, packed where the browser can. */
export async function packRows(rows: AllRows, title: string): Promise<Uint8Array<ArrayBuffer>> {
  return packed(await writeBackup(rows, { title, schema: newestSchema, sha256: browserSha256() }));
}

/** Sessions and laps that are not deleted. */
export function liveCounts({ sessions, runs }: AllRows): {
  readonly sessions: number;
  readonly laps: number;
} {
  const isLive = ({ deletedAt }: { readonly deletedAt?: number }) => deletedAt === undefined;
  return {
    sessions: sessions.filter(isLive).length,
    laps: runs.filter(isLive).reduce((sum, run) => sum + run.laps.filter(isLive).length, 0),
  };
}
