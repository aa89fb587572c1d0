import type { AsideRow } from "#domain";
import { printAddress } from "#state/address.ts";
import { Notice } from "#ui/Notice.tsx";
import { asideThing, sayAsideCount } from "#words";

/** Rows named at most; how many there are is said. */
const most = 3;

/** Which rows are set aside, why, and where they can be mended. */
export function AsideRows({ rows }: { readonly rows: readonly AsideRow[] }) {
  const [it, they] = rows.length === 1 ? ["it", "It is"] : ["them", "They are"];
  return (
    <div role="status">
      <Notice
        tone="caution"
        actions={<a href={printAddress({ place: "data", part: "aside" })}>Mend or delete {it}, on Data</a>}
      >
        <p>
          <strong>{sayAsideCount(rows.length)}:</strong>
        </p>
        <ul>
          {rows.slice(0, most).map((row) => (
            <li key={row.id}>
              <bdi>{asideThing(row)}</bdi> ({row.why})
            </li>
          ))}
          {rows.length > most && <li>and {(rows.length - most).toLocaleString("en")} more</li>}
        </ul>
        <p>
          All others are shown. Figures are without {it}. {they} kept as stored, also in backups.
        </p>
      </Notice>
    </div>
  );
}
