import { formatSeconds, type Id } from "#domain";
import { printAddress } from "#state/address.ts";
import type { WhereToFind } from "#stats";
import { Disclosure } from "#ui/Disclosure.tsx";
import { sayCornersThatGive, saySectorShares, whereInShort } from "#words";
import styles from "./Where.module.css";

interface WhereProps {
  readonly comboId: Id;
  readonly where: WhereToFind;
}

/** Where the time that a target still needs could come from: by sector, and at which corners. */
export function Where({ comboId, where }: WhereProps) {
  const { sectors } = where;
  const atCorners = sayCornersThatGive(where);
  return (
    <Disclosure title="Where it could come from" answer={whereInShort(where)} level={4}>
      <div className={styles["body"]}>
        <p>{saySectorShares(where)}</p>
        {sectors.known && <Shares shares={sectors.value.shares} />}
        {atCorners !== undefined && <p>{atCorners}</p>}
        <p>
          <a href={printAddress({ place: "corners", comboId })}>
            {atCorners === undefined
              ? "Look at corners in a replay: it shows which could give it"
              : "Corners"}
          </a>
        </p>
      </div>
    </Disclosure>
  );
}

/** One line a sector: its share as a length and in seconds. */
function Shares({ shares }: { readonly shares: readonly number[] }) {
  const most = Math.max(...shares);
  const lines = shares.map((ms, index) => ({ name: `Sector ${index + 1}`, ms }));
  return (
    <table className={styles["shares"]}>
      <tbody>
        {lines.map(({ name, ms }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td className={styles["room"]}>
              <div
                className={styles["bar"]}
                style={{ inlineSize: `${most === 0 ? 0 : (100 * ms) / most}%` }}
              />
            </td>
            <td className={styles["figure"]}>{formatSeconds(ms)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
