import { formatDelta } from "#domain";
import type { Factor, FactorGroup, FactorGroups } from "#stats";
import { type Row, RuledTable } from "#ui/RuledTable.tsx";
import { factorNames, sayMissing, sayUsual } from "#words";
import styles from "./NotYet.module.css";

interface FactorTableProps {
  readonly factors: readonly FactorGroups[];
  readonly reading: string;
}

const columns = [
  { key: "with", title: "driven with" },
  { key: "laps", title: "clean laps", figures: true },
  { key: "usual", title: "usual", figures: true, strong: true },
  { key: "against", title: "difference, and its range" },
] as const;

/** Clean laps by effort, surface, tyres, set-up and focus, as far as they varied. */
export function FactorTable({ factors, reading }: FactorTableProps) {
  const varied = factors.filter(({ groups }) => groups.length > 1);
  if (varied.length === 0) return null;
  return (
    <div className={styles["place"]}>
      <h3>By what they were driven with</h3>
      <p>{reading}</p>
      <RuledTable
        caption="Clean laps by what they were driven with"
        captionHidden
        columns={columns}
        rows={varied.flatMap(({ factor, groups }) =>
          groups.map((group, index) => rowOf(factor, group, index === 0)),
        )}
      />
    </div>
  );
}

function rowOf(factor: Factor, { value, laps, usual, difference }: FactorGroup, isMost: boolean): Row {
  const seconds = (ms: number) => formatDelta(ms, 2);
  return {
    id: `${factor} ${value}`,
    cells: {
      with: `${factorNames[factor]}: ${value}`,
      laps,
      usual: usual === undefined ? "—" : sayUsual(usual.ms, usual.decimals),
      against: isMost
        ? "the most driven"
        : difference.known
          ? `${seconds(difference.value.estimate)} s, ${seconds(difference.value.low)} to ${seconds(difference.value.high)}`
          : sayMissing(difference.reason),
    },
  };
}
