import { asideRows } from "#db";
import { useRows } from "#live";
import { printAddress, useAddress } from "#state/address.ts";
import { Notice } from "#ui/Notice.tsx";
import { asideThing, sayAsideCount } from "#words";

/** Rows named at most; how many there are is said. */
const most = 3;

/** Stands above every page but Data, where they can be mended, while rows are set aside: which, and why. */
export function AsideNotice() {
  const { place } = useAddress();
  const rows = useRows(asideRows, []);
  if (rows === undefined || rows.length === 0 || place === "data") return null;
  const [it, they] = rows.length === 1 ? ["it", "It is"] : ["them", "They are"];
  return (
    <div role="status">
      <Notice
        tone="caution"
        actions={<a href={printAddress({ place: "data" })}>Mend or delete {it}, on Data</a>}
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
