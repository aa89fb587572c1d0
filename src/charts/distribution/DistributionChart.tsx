import { formatLapTime } from "#domain";
import type { LapBin, LapDistribution } from "#stats";
import { timeTicks } from "../axes/timeTicks.ts";
import { ChartFrame, type ChartWords } from "../frame/ChartFrame.tsx";
import type { KeyItem } from "../frame/layKey.ts";
import { leftRoom, Plane } from "../frame/Plane.tsx";
import { plotHeight, type Room } from "../frame/useRoom.ts";
import type { Walk } from "../frame/useWalk.ts";
import { distributionTable, sayBin } from "./distributionTable.ts";
import { type Column, fullestShare, HistogramColumns } from "./HistogramColumns.tsx";

export interface DistributionChartProps extends ChartWords {
  readonly distribution: LapDistribution;
  /** The two periods in words. */
  readonly nowWords: string;
  readonly beforeWords: string;
}

/** The bars of both periods have one scale, of shares: fourteen laps and three hundred look alike where they lie alike. */
function keyOf(columns: readonly Column[]): readonly KeyItem[] {
  const longest = Math.round(fullestShare(columns) * 100);
  return [
    { mark: "bar", text: "share of laps" },
    { mark: "bar", text: `the longest bar is ${longest} % of the laps` },
    { mark: "box", text: "half of the laps" },
    { mark: "tick", text: "usual lap" },
  ];
}

/** The laps of two periods side by side on one scale of lap times. */
export function DistributionChart(props: DistributionChartProps) {
  const { distribution, nowWords, beforeWords, ...words } = props;
  const { bins, now, before } = distribution;
  const columns: Column[] = [
    ...(before === undefined
      ? []
      : [
          {
            name: "before",
            words: beforeWords,
            quarters: before,
            at: 0,
            bars: bins.map((bin) => bin.before),
          } as const,
        ]),
    ...(now === undefined
      ? []
      : [
          {
            name: "now",
            words: nowWords,
            quarters: now,
            at: before === undefined ? 0 : 1,
            bars: bins.map((bin) => bin.now),
          } as const,
        ]),
  ];
  return (
    <ChartFrame
      {...words}
      table={distributionTable(distribution)}
      series={columns.map(({ words: period, quarters, bars, at }) => ({
        name: period,
        points: bins.map((bin, index) => ({
          x: at + 0.15,
          y: (bin.from + bin.to) / 2,
          text: sayBin(bin, bars[index] ?? 0, quarters.laps),
        })),
      }))}
      note={sayNotDrawn((now?.slower ?? 0) + (before?.slower ?? 0))}
    >
      {(room, walk) =>
        columns.length > 0 && <DistributionPlane bins={bins} columns={columns} room={room} walk={walk} />
      }
    </ChartFrame>
  );
}

function sayNotDrawn(slower: number): string | undefined {
  if (slower === 0) return undefined;
  return `${slower === 1 ? "1 lap lies" : `${slower} laps lie`} above what is drawn; the table counts them.`;
}

interface DistributionPlaneProps {
  readonly bins: readonly LapBin[];
  readonly columns: readonly Column[];
  readonly room: Room;
  readonly walk: Walk;
}

function DistributionPlane({ bins, columns, room, walk }: DistributionPlaneProps) {
  const { em } = room;
  const ends = bins.flatMap(({ from, to }) => [from, to]);
  const yAxis = timeTicks(ends);
  const sayY = (ms: number) => formatLapTime(ms, yAxis.decimals);
  const left = leftRoom(yAxis, sayY, em);
  const key = keyOf(columns);
  return (
    <Plane
      room={room}
      plotHeight={plotHeight(room, "more")}
      left={left}
      right={16}
      xDomain={[0, columns.length]}
      xTicks={columns.map(({ at, words, quarters: { laps } }) => ({
        value: at + 0.5,
        label: `${words}: ${laps === 1 ? "1 lap" : `${laps} laps`}`,
      }))}
      yAxis={yAxis}
      sayY={sayY}
      title="lap time, lower is faster"
      keyItems={key}
      walk={walk}
      upright
    >
      <HistogramColumns bins={bins} columns={columns} em={em} />
    </Plane>
  );
}
