import type { Axis } from "../axes/niceAxis.ts";
import { ChartFrame, type ChartWords } from "../frame/ChartFrame.tsx";
import { AxisTitleText, type RangeRow, RangeRows } from "./RangeRows.tsx";
import { endsOf, type RangeWords, rangeRowsTable } from "./rangeRowsTable.ts";

export interface RangeRowsChartProps extends ChartWords, RangeWords {
  readonly rows: readonly RangeRow[];
  /** What the axis shows: "seconds a lap; left is faster". */
  readonly axisTitle: string;
  /** Axis over the values: ticks and their decimals. */
  readonly axisOf: (values: readonly number[]) => Axis;
  /** Whether zero means no difference and is drawn as a line. */
  readonly hasZero?: boolean;
}

/** A few figures below each other on one scale, each a dot on the range in which it very likely lies. */
export function RangeRowsChart(props: RangeRowsChartProps) {
  const { rows, axisTitle, axisOf, hasZero = false, ...words } = props;
  const values = rows.flatMap(({ low, value, high }) => [low, value, high]);
  const axis = axisOf(hasZero ? [0, ...values] : values);
  return (
    <ChartFrame
      {...words}
      table={rangeRowsTable(rows, words)}
      series={[
        {
          name: "Figures",
          points: rows.map((row, index) => ({
            x: row.value,
            y: index,
            text: `${row.label}: ${words.say(row.value)}, very likely ${endsOf(row, words).join(" to ")}`,
          })),
        },
      ]}
    >
      {(room, walk) =>
        rows.length > 0 && (
          <RangeRows rows={rows} axis={axis} hasZero={hasZero} room={room} walk={walk}>
            <AxisTitleText text={axisTitle} em={room.em} />
          </RangeRows>
        )
      }
    </ChartFrame>
  );
}
