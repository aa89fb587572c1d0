import { type MatchedTable, useDevice } from "./device.ts";

const kept = 30;

/** How a table with these columns was matched last on this device. */
export function matchingOf(signature: string): MatchedTable | undefined {
  return useDevice.getState().tables?.find((table) => table.signature === signature);
}

/** Keeps how a table was matched; of many, those used last. */
export function keepMatching(table: MatchedTable): void {
  useDevice.getState().change(({ tables = [] }) => {
    const others = tables.filter(({ signature }) => signature !== table.signature);
    return { tables: [table, ...others].slice(0, kept) };
  });
}
