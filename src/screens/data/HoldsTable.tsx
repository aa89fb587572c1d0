import type { Preview } from "#live";
import { type Column, RuledTable } from "#ui/RuledTable.tsx";
import { backupRows } from "./backupRows.ts";

const columns: readonly Column[] = [
  { key: "what", title: "in the file" },
  { key: "rows", title: "number", figures: true },
  { key: "deleted", title: "and deleted", figures: true },
];

/** What a backup holds, table by table. */
export function HoldsTable({ holds }: { readonly holds: Preview["holds"] }) {
  const rows = backupRows(holds);
  if (rows.length === 0) return <p>There is no row in it.</p>;
  return <RuledTable caption="What the backup holds" captionHidden columns={columns} rows={rows} />;
}
