import type { BothEdited } from "#db";
import type { Listed } from "#live";
import { type Column, RuledTable } from "#ui/RuledTable.tsx";
import { sayBothEdited, sayPlace } from "./bothEditedWords.ts";

const shown = 20;
const columns: readonly Column[] = [
  { key: "row", title: "changed on both sides" },
  { key: "here", title: "here" },
  { key: "there", title: "in the file" },
  { key: "stays", title: "stays", unbroken: true },
];

/** Rows that both sides edited, one by one, with the one a merge keeps. */
export function BothEditedTable({ both }: { readonly both: Listed<BothEdited> }) {
  const rest = both.all - Math.min(shown, both.first.length);
  return (
    <>
      <p>
        {both.all === 1 ? "One row was" : `${both.all} rows were`} changed here and in the file, as far as
        their stamps tell. The one changed last stays.
      </p>
      <RuledTable
        caption="Rows changed on both sides"
        captionHidden
        columns={columns}
        rows={both.first.slice(0, shown).map((row) => ({
          id: `${row.table} ${row.id}`,
          cells: {
            row: sayPlace(row),
            here: sayBothEdited(row, row.here),
            there: sayBothEdited(row, row.there),
            stays: row.stays === "here" ? "here" : "the file’s",
          },
        }))}
      />
      {rest > 0 && <p>and {rest} more</p>}
    </>
  );
}
