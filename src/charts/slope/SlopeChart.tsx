import { formatDelta, wayOf } from "#domain";
import { secondTicks } from "../axes/secondTicks.ts";
import { timeTicks } from "../axes/timeTicks.ts";
import { ChartFrame, type ChartWords } from "../frame/ChartFrame.tsx";
import { spreadLabels } from "../frame/spreadLabels.ts";
import { plotHeight, type Room, textWidth } from "../frame/useRoom.ts";
import { nearestAt, type Walk } from "../frame/useWalk.ts";
import styles from "./Slope.module.css";
import { type SlopeOf, type SlopePair, sayEnd, sayPair, slopeTable } from "./slopeTable.ts";

export interface SlopeChartProps extends ChartWords {
  readonly pairs: readonly SlopePair[];
  readonly of: SlopeOf;
  /** What was on as A and as B: "gain 72 %". */
  readonly sayA: string;
  readonly sayB: string;
  readonly note?: string | undefined;
}

/** The pairs of a rig test: each a line from its run with A to its run with B on one scale, lower is faster. */
export function SlopeChart({ pairs, of, sayA, sayB, note, ...words }: SlopeChartProps) {
  const points = pairs.map((pair, index) => ({ x: index, y: pair.b, text: sayPair(pair, of) }));
  return (
    <ChartFrame
      {...words}
      table={slopeTable(pairs, of)}
      series={[{ name: "Pairs of runs", points }]}
      note={note}
    >
      {(room, walk) =>
        pairs.length > 0 && (
          <SlopeDrawing pairs={pairs} of={of} heads={[`A: ${sayA}`, `B: ${sayB}`]} room={room} walk={walk} />
        )
      }
    </ChartFrame>
  );
}

interface SlopeDrawingProps {
  readonly pairs: readonly SlopePair[];
  readonly of: SlopeOf;
  readonly heads: readonly [string, string];
  readonly room: Room;
  readonly walk: Walk;
}

const inks = { faster: "gain", slower: "loss", "the same": "same" } as const;
const titles: Readonly<Record<SlopeOf, string>> = {
  usual: "usual lap of the run, lower is faster",
  scatter: "how far laps differ, lower is steadier",
};

function SlopeDrawing({ pairs, of, heads, room, walk }: SlopeDrawingProps) {
  const { width, em } = room;
  const axis = axisOf(
    pairs.flatMap(({ a, b }) => [a, b]),
    of,
  );
  const [lowest, highest] = axis.domain;
  const label = (pair: SlopePair) => `${pair.number}: ${formatDelta(pair.b - pair.a, 2)}`;
  const left = Math.max(...axis.ticks.map((tick) => textWidth(sayEnd(tick, of), em))) + em;
  const right = width - Math.max(...pairs.map((pair) => textWidth(label(pair), em))) - em * 1.6;
  const lineHeight = em * 1.25;
  const high = Math.max(plotHeight(room, "most"), pairs.length * lineHeight);
  const top = em * 4.2;
  const bottom = top + high;
  const y = (ms: number) => Math.round((bottom - ((ms - lowest) / (highest - lowest)) * high) * 100) / 100;
  const inset = Math.min(em * 2, (right - left) / 8);
  const [atA, atB] = [left + inset, right - inset];
  const middles = spreadLabels(
    pairs.map(({ b }) => ({ y: y(b), height: lineHeight })),
    top - em,
    bottom + em,
  );
  /** The pair whose line lies nearest where the pointer is. */
  const pairAt = (ground: DOMRect, clientX: number, clientY: number) => {
    const share = Math.min(1, Math.max(0, (clientX - ground.left - (atA - left)) / (atB - atA)));
    return nearestAt(pairs, top + clientY - ground.top, ({ a, b }) => y(a) + (y(b) - y(a)) * share);
  };
  const shown = headsIn(heads, width - em * 1.5, em * 1.1);
  const walked = walk.point === undefined ? undefined : pairs[walk.point.x];
  return (
    <svg width={width} height={bottom + em * 1.5} aria-hidden="true" className={styles["drawing"]}>
      <text x={0} y={em} fontSize={em} className={styles["words"]}>
        {titles[of]}
      </text>
      {axis.ticks.map((tick) => (
        <g key={tick}>
          <path d={`M${left} ${y(tick)}H${right}`} className={styles["ruled"]} />
          <text
            x={left - em * 0.6}
            y={y(tick)}
            textAnchor="end"
            dominantBaseline="central"
            fontSize={em}
            className={styles["words"]}
          >
            {sayEnd(tick, of)}
          </text>
        </g>
      ))}
      {[atA, atB].map((x, side) => (
        <g key={x}>
          <path d={`M${x} ${top}V${bottom}`} className={styles["upright"]} />
          <text
            x={side === 0 ? 0 : width}
            y={top - em * 1.1}
            textAnchor={side === 0 ? "start" : "end"}
            fontSize={em * 1.05}
            className={styles["head"]}
          >
            {shown[side]}
          </text>
        </g>
      ))}
      {pairs.map((pair, index) => {
        const ink = inks[wayOf(pair.b - pair.a, 2)];
        const middle = middles[index] ?? 0;
        return (
          <g key={pair.number}>
            <path
              d={`M${atB} ${y(pair.b)}L${right - 4} ${y(pair.b)}L${right + 4} ${middle}`}
              className={styles["leader"]}
            />
            <path d={`M${atA} ${y(pair.a)}L${atB} ${y(pair.b)}`} className={styles[ink]} />
            <path d={`M${atA} ${y(pair.a)}h0M${atB} ${y(pair.b)}h0`} className={styles[`${ink}Dot`]} />
            <text
              x={right + em * 0.7}
              y={middle}
              dominantBaseline="central"
              fontSize={em}
              className={styles[`${ink}Words`]}
            >
              {label(pair)}
            </text>
          </g>
        );
      })}
      <g data-passing="">
        {walked !== undefined && (
          <path
            d={`M${atA} ${y(walked.a)}L${atB} ${y(walked.b)}`}
            pointerEvents="none"
            className={styles["walked"]}
          />
        )}
        {/* biome-ignore lint/a11y/noStaticElementInteractions: the same is done by keys on the figure around it */}
        <rect
          x={left}
          y={top}
          width={Math.max(0, right - left)}
          height={high}
          onPointerMove={(event) =>
            event.pointerType === "mouse" &&
            walk.onPointAt(pairAt(event.currentTarget.getBoundingClientRect(), event.clientX, event.clientY))
          }
          onPointerLeave={(event) => event.pointerType === "mouse" && walk.onPointAt(undefined)}
          onClick={(event) =>
            walk.onPress(pairAt(event.currentTarget.getBoundingClientRect(), event.clientX, event.clientY))
          }
          className={styles["ground"]}
        />
      </g>
    </svg>
  );
}

/** Ticks in ms, whatever is judged. */
function axisOf(values: readonly number[], of: SlopeOf) {
  if (of === "usual") return timeTicks(values);
  const axis = secondTicks(values.map((ms) => ms / 1000));
  const [low, high] = axis.domain;
  return { domain: [low * 1000, high * 1000] as const, ticks: axis.ticks.map((tick) => tick * 1000) };
}

/** The heads as far as both have room: a short one leaves its room to the other. */
function headsIn(heads: readonly [string, string], room: number, em: number): readonly [string, string] {
  const [a, b] = heads;
  const [ofA, ofB] = [textWidth(a, em), textWidth(b, em)];
  return [cut(a, Math.max(room / 2, room - ofB), em), cut(b, Math.max(room / 2, room - ofA), em)];
}

/** As much of a text as has room. */
function cut(text: string, room: number, em: number): string {
  if (textWidth(text, em) <= room) return text;
  const signs = [...text];
  while (signs.length > 1 && textWidth(`${signs.join("")}…`, em) > room) signs.pop();
  return `${signs.join("")}…`;
}
