import type { CalendarDate } from "#domain";
import type { DrillWeeks } from "#stats";
import { drillReading, drillTitle, shareEnds } from "#words";
import { percentTicks } from "../axes/percentTicks.ts";
import { RangeRowsChart } from "../rangeRows/RangeRowsChart.tsx";

interface DrillChartProps {
  /** The drill that the title tells. */
  readonly told: DrillWeeks;
  /** Shares of tries that worked, with what each is of. */
  readonly rows: readonly { readonly id: string; readonly name: string; readonly of: DrillWeeks["all"] }[];
  readonly asOf: CalendarDate;
  readonly fileName: string;
}

/** How often tries of drills worked, each share on its range. */
export function DrillChart({ told, rows, asOf, fileName }: DrillChartProps) {
  return (
    <RangeRowsChart
      title={drillTitle(told)}
      reading={drillReading(told)}
      level={3}
      asOf={asOf}
      fileName={fileName}
      rows={rows.map(rowOf)}
      axisTitle="percent of tries; line: very likely range"
      axisOf={(values) => percentTicks(values)}
      say={(percent) => `${Math.round(percent)} %`}
      csvUnit="percent"
    />
  );
}

function rowOf({ id, name, of: { good, tries, share, low, high } }: DrillChartProps["rows"][number]) {
  const [least, most] = shareEnds({ low, high });
  return {
    id,
    label: `${name}: ${good} of ${tries}`,
    value: 100 * share,
    low: 100 * low,
    high: 100 * high,
    ends: [`${least} %`, `${most} %`] as const,
  };
}
