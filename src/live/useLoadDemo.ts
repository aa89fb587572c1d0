import { useState } from "react";
import { checkRows, migrateRows } from "#db";
import type { Reading } from "#domain";
import { useNotices } from "#state/notices.ts";
import { useLogbook } from "./logbookContext.ts";
import { useRestore } from "./useRestore.ts";
import { useShelved } from "./useShelved.ts";

/** A backup as its file gives it, still to be migrated and checked. */
interface ReadBackup {
  readonly title: string;
  readonly schema: number;
  readonly tables: Readonly<Record<string, readonly Readonly<Record<string, unknown>>[]>>;
}

/**
 * Loads the demo as a logbook of its own and opens it; one that is on the shelf already is opened again.
 * @param read fetches the demo and reads it
 */
export function useLoadDemo(read: () => Promise<Reading<{ readonly backup: ReadBackup }>>): {
  readonly load: () => void;
  readonly isLoading: boolean;
} {
  const { openOther } = useLogbook();
  const shelved = useShelved();
  const { restore } = useRestore();
  const say = useNotices((notices) => notices.say);
  const [isLoading, setLoading] = useState(false);
  const refuse = (why: string) =>
    say({ kind: "fault", text: `Demo logbook not loaded. ${why} Nothing was changed.`, actions: [] });

  const fetchAndRestore = async () => {
    const reading = await read();
    if (!reading.ok) return refuse(`${reading.problem.wrong} ${reading.problem.right}`);
    const { title, schema, tables } = reading.backup;
    const { rows, bad } = checkRows(migrateRows(tables, schema));
    if (bad.length > 0) return refuse(`${bad.length} of its rows are not as they should be.`);
    return restore({ title, kind: "demo", rows });
  };
  const load = () => {
    const there = shelved?.find(({ kind }) => kind === "demo");
    if (there) return openOther(there.name);
    setLoading(true);
    void fetchAndRestore().finally(() => setLoading(false));
  };
  return { load, isLoading };
}
