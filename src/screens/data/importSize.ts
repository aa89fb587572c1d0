import type { ImportedSession } from "#db";

/** What each lap gets besides its fields. */
const stamps = { id: "0".repeat(36), n: 10, createdAt: 1e12, updatedAt: 1e12 };

/** Bytes that the sessions of a table take as rows, about. */
export function importSize(sessions: readonly ImportedSession[]): number {
  const rows = sessions.map(({ runs, ...session }) => ({
    ...session,
    runs: runs.map(({ settings, laps }) => ({
      ...settings,
      ...stamps,
      laps: laps.map(({ lap }) => ({ ...stamps, ...lap })),
    })),
  }));
  return JSON.stringify(rows).length;
}
