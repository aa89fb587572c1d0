import type { useIncoming } from "#live";
import type { SeenFile } from "./useLook.ts";

/** What every way of a file into this browser is handed. */
export interface WayProps {
  readonly file: SeenFile;
  readonly incoming: ReturnType<typeof useIncoming>;
  /** Called when the driver cancels, and when the file is in. */
  readonly onLeave: () => void;
}

/** "Restore without this row", where some of the rows cannot be taken. */
export function withoutBad(act: string, asUsual: string, bad: number): string {
  if (bad === 0) return asUsual;
  return `${act} without ${bad === 1 ? "this row" : `these ${bad} rows`}`;
}
