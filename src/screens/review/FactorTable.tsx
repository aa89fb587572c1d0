import { formatDelta, formatLapTime } from "#domain";
import type { FactorGroup, FactorGroups } from "#stats";
import { type Row, RuledTable } from "#ui/RuledTable.tsx";
import { factorNames, sayTooFew } from "#words";
import styles from "./NotYet.module.css";

interface FactorTableProps {
  readonly factors: readonly FactorGroups[];
  readonly reading: string;
}

const columns = [
  { key: "with", title: "driven with" },
  { key: "laps", title: "clean laps", figures: true },
  { key: "sessions", title: "sessions", figures: true },
  { key: "usual", title: "usual", figures: true, strong: true },
  { key: "against", title: "against the most driven" },
] as const;

/** Clean laps by effort, surface, tyres, set-up and focus, as far as they varied. */
export function FactorTable({ factors, reading }: FactorTableProps) {
  const varied = factors.filter(({ groups }) => groups.length > 1);
  if (varied.length === 0) return null;
  return (
    <div className={styles["place"]}>
      <h3>By what they were driven with</h3>
      <p>{reading}</p>
      {varied.map(({ factor, groups }) => (
        <RuledTable
          key={factor}
          caption={factorNames[factor]}
          columns={columns}
          rows={groups.map((group, index) => rowOf(group, index === 0))}
        />
      ))}
    </div>
  );
}

function rowOf({ value, laps, sessions, usual, difference }: FactorGroup, isMost: boolean): Row {
  const seconds = (ms: number) => formatDelta(Math.round(ms / 10) * 10).slice(0, -1);
  return {
    id: value,
    cells: {
      with: value,
      laps,
      sessions,
      usual: usual === undefined ? "—" : formatLapTime(usual),
      against: isMost
        ? "—"
        : difference.known
          ? `${seconds(difference.value.estimate)} s (${seconds(difference.value.low)} to ${seconds(difference.value.high)})`
          : sayTooFew(difference.reason),
    },
  };
}
