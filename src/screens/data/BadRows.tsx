import type { Listed, NamedBad } from "#live";
import { Notice } from "#ui/Notice.tsx";
import { type Column, RuledTable } from "#ui/RuledTable.tsx";
import { tableWord } from "./backupRows.ts";

const shown = 20;
const columns: readonly Column[] = [
  { key: "row", title: "row" },
  { key: "why", title: "what is wrong" },
];

/** Rows of a backup that cannot be taken, each with its reason. */
export function BadRows({ bad }: { readonly bad: Listed<NamedBad> }) {
  const rest = bad.all - Math.min(shown, bad.first.length);
  return (
    <>
      <Notice tone="caution">
        <p>
          <strong>{bad.all === 1 ? "One row is" : `${bad.all} rows are`} not as they should be.</strong> Go on
          without them, and they are set aside: here on Data you can mend them, or delete them. Or cancel:
          nothing has been stored yet.
        </p>
      </Notice>
      <RuledTable
        caption="Rows that cannot be restored"
        captionHidden
        columns={columns}
        rows={bad.first.slice(0, shown).map(({ table, place, why }) => ({
          id: `${table} ${place} ${why}`,
          cells: { row: `${tableWord(table)}, row ${place}`, why },
        }))}
      />
      {rest > 0 && <p>and {rest} more</p>}
    </>
  );
}
