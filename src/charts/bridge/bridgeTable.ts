import { formatDelta } from "#domain";
import type { ChartCell, ChartTable } from "../frame/chartTable.ts";

/** A line of the time account. */
export interface AccountLine {
  readonly id: string;
  /** "pace", "repeatability", "mistakes", "others on track" */
  readonly label: string;
  /** ms a lap: what it costs; negative where it gains. */
  readonly ms: number;
}

function deltaCell(ms: number): ChartCell {
  return { text: `${formatDelta(ms)} s`, value: Math.round(ms) / 1000 };
}

/** The time account as a table with its balance. */
export function bridgeTable(lines: readonly AccountLine[], balance: AccountLine): ChartTable {
  const row = ({ id, label, ms }: AccountLine) => ({
    id,
    cells: { line: { text: label }, seconds: deltaCell(ms) },
  });
  return {
    columns: [
      { key: "line", title: "line", csvTitle: "line" },
      { key: "seconds", title: "a lap", csvTitle: "seconds_a_lap", figures: true, strong: true },
    ],
    rows: lines.map(row),
    balance: row(balance),
  };
}

/** A line's place along the bridge, ms from the start of the account. */
export interface BridgeStep extends AccountLine {
  readonly from: number;
  readonly to: number;
}

/** Each line begins where the one before it ended. */
export function bridgeSteps(lines: readonly AccountLine[]): readonly BridgeStep[] {
  let at = 0;
  return lines.map((line) => {
    const from = at;
    at += line.ms;
    return { ...line, from, to: at };
  });
}
