import type { RemarkKind } from "#domain";
import { aboutRemark } from "#domain";
import { Name } from "#ui/Name.tsx";
import styles from "./CornerRow.module.css";
import { MarkSample } from "./MarkSample.tsx";

/** A corner in the row: what it costs, ms a lap, and what was noted there. */
export interface CornerInRow {
  readonly number: number;
  readonly name: string | undefined;
  readonly href: string;
  /** The same in words. */
  readonly label: string;
  /** Undefined where its line has not been looked at. */
  readonly unusedMs: number | undefined;
  readonly mistakesMs: number | undefined;
  readonly counts: readonly { readonly kind: RemarkKind; readonly count: number }[];
  /** The next corner begins at once. */
  readonly isJoined: boolean;
}

interface CornerRowProps {
  /** In lap order. */
  readonly corners: readonly CornerInRow[];
  /** The one that is looked at, or comes first. */
  readonly first: number | undefined;
  /** Where corners are to be chosen: a press chooses one, or lets it go, instead of opening it. */
  readonly choosing?:
    | { readonly numbers: readonly number[]; readonly onPress: (number: number) => void }
    | undefined;
}

/**
 * The corners of a lap as a row of numbers in their order, each with its bar of seconds and the marks of what went wrong
 * there; a press opens the corner.
 */
export function CornerRow({ corners, first, choosing }: CornerRowProps) {
  const costOf = ({ unusedMs = 0, mistakesMs = 0 }: CornerInRow) => unusedMs + Math.max(0, mistakesMs);
  const most = Math.max(1, ...corners.map(costOf));
  const share = (ms: number | undefined) => ({ blockSize: `${(100 * Math.max(0, ms ?? 0)) / most}%` });
  const kinds = [...new Set(corners.flatMap(({ counts }) => counts.map(({ kind }) => kind)))];
  const hasBars = corners.some((corner) => costOf(corner) > 0);
  return (
    <div className={styles["picture"]}>
      <ol className={styles["row"]} data-bars={hasBars || undefined} aria-label="Corners in lap order">
        {corners.map((corner) => (
          <li key={corner.number} data-joined={corner.isJoined || undefined}>
            {choosing === undefined ? (
              <a
                href={corner.href}
                aria-label={corner.label}
                data-first={corner.number === first || undefined}
                className={styles["corner"]}
              >
                <InRow corner={corner} share={hasBars ? share : undefined} />
              </a>
            ) : (
              <button
                type="button"
                aria-label={corner.label}
                aria-pressed={choosing.numbers.includes(corner.number)}
                onClick={() => choosing.onPress(corner.number)}
                className={styles["corner"]}
              >
                <InRow corner={corner} share={hasBars ? share : undefined} />
              </button>
            )}
          </li>
        ))}
      </ol>
      {(hasBars || kinds.length > 0) && (
        <ul className={styles["key"]} aria-label="What the bars and marks are">
          {hasBars && (
            <>
              <li>
                <span aria-hidden="true" className={styles["unusedSample"]} />
                road left unused, an estimate
              </li>
              <li>
                <span aria-hidden="true" className={styles["mistakesSample"]} />
                mistakes, measured
              </li>
            </>
          )}
          {kinds.map((kind) => (
            <li key={kind}>
              <MarkSample kind={kind} />
              {aboutRemark(kind).word}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

interface InRowProps {
  readonly corner: CornerInRow;
  /** Height of a cost; undefined where no corner has a bar. */
  readonly share: ((ms: number | undefined) => { readonly blockSize: string }) | undefined;
}

/** Bar, number, name and marks of a corner. */
function InRow({ corner, share }: InRowProps) {
  return (
    <>
      {share && (
        <span aria-hidden="true" className={styles["bars"]}>
          <span className={styles["unused"]} style={share(corner.unusedMs)} />
          <span className={styles["mistakes"]} style={share(corner.mistakesMs)} />
        </span>
      )}
      <span className={styles["number"]}>{corner.number}</span>
      {corner.name !== undefined && (
        <span className={styles["name"]}>
          <Name>{corner.name}</Name>
        </span>
      )}
      <span aria-hidden="true" className={styles["marks"]}>
        {corner.counts.map(({ kind, count }) => (
          <span key={kind}>
            <MarkSample kind={kind} />
            {count}
          </span>
        ))}
      </span>
    </>
  );
}
