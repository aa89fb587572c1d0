import { memo, type PointerEvent, useMemo } from "react";
import { type Id, lapSigns, type StripLap } from "#domain";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { sayLapTime, sayLevel, sayStrip, sayStripLap, sayStripThinned, sayUsual } from "#words";
import { spreadLabels } from "../frame/spreadLabels.ts";
import { textWidth, useRoom } from "../frame/useRoom.ts";
import { nearestAt, useWalk } from "../frame/useWalk.ts";
import styles from "./LapStrip.module.css";
import { type DrawnLine, layStrip, type StripDrawing, type StripSize } from "./layStrip.ts";
import { MarkPieces } from "./MarkPieces.tsx";
import type { StripLine, StripLines, StripScale } from "./stripScale.ts";

export interface LapStripProps {
  readonly laps: readonly StripLap[];
  readonly lines?: StripLines | undefined;
  /** One for several strips (`stripScale` of all their laps); taken from its own laps and lines where it is not given. */
  readonly scale?: StripScale | undefined;
  /** Across a page; small, in a row of a list; large, to be read from a metre. */
  readonly size: "full" | "small" | "large";
  /** What it is the strip of: "Run 2". */
  readonly name: string;
  /** What a tap on a lap, or Enter, opens. Not of the small size. */
  readonly onOpen?: ((lapId: Id) => void) | undefined;
}

/**
 * The strip of laps: a dot a lap in order, lower is faster, with PB, usual and target as lines. What says the same is not
 * drawn anew.
 */
export const LapStrip = memo(function LapStrip(props: LapStripProps) {
  return props.size === "small" ? <SmallStrip {...props} /> : <FullStrip {...props} />;
}, saysTheSame);

function saysTheSame(a: LapStripProps, b: LapStripProps): boolean {
  return (
    a.size === b.size &&
    a.name === b.name &&
    a.onOpen === b.onOpen &&
    a.laps.length === b.laps.length &&
    JSON.stringify([a.laps, a.lines, a.scale]) === JSON.stringify([b.laps, b.lines, b.scale])
  );
}

/** Of a label at a line's end, em. */
const labelHeight = 1.2;
const none: StripLines = {};
const smallWidth = 96;

const SmallStrip = memo(function SmallStrip({ laps, lines = none, scale, name }: LapStripProps) {
  const drawing = useMemo(
    () => layStrip({ laps, lines, scale, size: "small", width: smallWidth }),
    [laps, lines, scale],
  );
  return (
    <svg
      role="img"
      aria-label={sayStrip(name, laps, drawing.places.length)}
      viewBox={`0 0 ${smallWidth} ${drawing.height}`}
      className={styles["small"]}
    >
      <Drawn drawing={drawing} />
    </svg>
  );
});

/** Below this width, in em, the labels are words alone: the figures stand at the head of the run. */
const narrowBelow = 36;

const FullStrip = memo(function FullStrip({ laps, lines = none, scale, size, name, onOpen }: LapStripProps) {
  const { box, square, room } = useRoom();
  const { width, em } = room;
  const isNarrow = width < narrowBelow * em;
  const labels = useMemo(() => labelsOf(lines, isNarrow), [lines, isNarrow]);
  const gutter =
    labels.size === 0 ? 0 : Math.max(...[...labels.values()].map((text) => textWidth(text, em))) + 8;
  const drawing = useMemo(
    () => layStrip({ laps, lines, scale, size: sizeAt(size, width / em), width: width - gutter }),
    [laps, lines, scale, size, width, em, gutter],
  );
  const { places, height } = drawing;
  // Large letters may need more height than the laps do.
  const whole = Math.max(height, labels.size * em * labelHeight);
  const points = useMemo(
    () =>
      places.map(({ lap, x, far }) => ({
        x,
        y: 0,
        id: lap.id,
        // Said when it is asked for: a lap typed behind hundreds of others asks for none.
        get text() {
          return sayStripLap(lap, far);
        },
      })),
    [places],
  );
  const series = useMemo(() => [{ name, points }], [name, points]);
  const walk = useWalk(series, onOpen);
  const at = places.find(({ lap }) => lap.id === walk.point?.id);
  const follow = (event: PointerEvent<SVGRectElement>) => {
    const x = event.clientX - event.currentTarget.getBoundingClientRect().left;
    const near = nearestAt(points, x, (point) => point.x);
    const distance = Math.abs((points[near]?.x ?? Number.POSITIVE_INFINITY) - x);
    walk.onPointAt(distance <= Math.max(leastReach, drawing.step) ? near : undefined);
  };
  const thinned = places.length < laps.length;
  return (
    <div className={styles["strip"]}>
      {/* biome-ignore lint/a11y/useSemanticElements: the figure is the drawing alone, not the words under it */}
      <div
        ref={box}
        role="figure"
        aria-label={sayStrip(name, laps, places.length)}
        aria-roledescription="strip of laps"
        aria-description={onOpen ? "Arrow keys walk its laps, Enter opens one" : "Arrow keys walk its laps"}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: its laps are walked by the arrow keys
        tabIndex={0}
        onKeyDown={walk.onKeyDown}
        className={styles["figure"]}
        data-size={size}
      >
        <span ref={square} className={styles["square"]} />
        <svg aria-hidden="true" width={width} height={whole} className={styles["drawing"]}>
          <Drawn drawing={drawing} />
          <Labels lines={drawing.lines} labels={labels} x={drawing.right + 8} height={whole} em={em} />
          {at && <circle cx={at.x} cy={at.y} r={9} className={styles["walked"]} />}
          {/* biome-ignore lint/a11y/noStaticElementInteractions: the same is done by keys on the figure around it */}
          <rect
            width={Math.max(0, width - gutter)}
            height={height}
            className={styles["ground"]}
            cursor={walk.open === undefined ? undefined : "pointer"}
            onPointerDown={follow}
            onPointerMove={follow}
            onPointerLeave={(event) => event.pointerType === "mouse" && walk.onPointAt(undefined)}
            onClick={walk.open}
          />
        </svg>
        <p aria-hidden="true" className={styles["point"]}>
          {walk.text}
        </p>
      </div>
      <LiveRegion message={walk.spoken} />
      {thinned && <p className={styles["note"]}>{sayStripThinned(places.length, laps.length)}.</p>}
    </div>
  );
});

/** A large strip needs less width for its height: there is nothing beside it. */
const largeFrom = 24;

function sizeAt(size: LapStripProps["size"], widthInEm: number): StripSize {
  if (size === "large") return widthInEm < largeFrom ? "full" : "large";
  return widthInEm < narrowBelow ? "narrow" : "full";
}

/** A dot is hit from so far away, px: at least 24 across. */
const leastReach = 24;

const sayLine = {
  usual: ({ ms, decimals }: StripLine) => sayUsual(ms, decimals),
  level: ({ ms }: StripLine) => sayLevel(ms),
  pb: ({ ms, decimals = 3 }: StripLine) => sayLapTime(ms, decimals),
  target: ({ ms, decimals = 3 }: StripLine) => sayLapTime(ms, decimals),
} as const;

const lineNames = { usual: "usual", level: "level", pb: lapSigns.pb, target: "target" } as const;

function labelsOf(lines: StripLines, isNarrow: boolean): Map<keyof StripLines, string> {
  return new Map(
    (["usual", "level", "pb", "target"] as const).flatMap((key) => {
      const line = lines[key];
      if (line === undefined) return [];
      return [[key, isNarrow ? lineNames[key] : `${lineNames[key]} ${sayLine[key](line)}`] as const];
    }),
  );
}

/** Lines first, then the marks, a path for each ink. */
const Drawn = memo(function Drawn({ drawing }: { readonly drawing: StripDrawing }) {
  const { lines, paths, left, right } = drawing;
  return (
    <>
      {lines.map(
        ({ of, y, beyond }) =>
          beyond === undefined && (
            <path key={of} d={`M${left - 1} ${y.toFixed(1)}H${right}`} className={styles[of]} />
          ),
      )}
      <MarkPieces pieces={paths} />
    </>
  );
});

interface LabelsProps {
  readonly lines: readonly DrawnLine[];
  readonly labels: ReadonlyMap<keyof StripLines, string>;
  readonly x: number;
  readonly height: number;
  readonly em: number;
}

/**
 * What the lines are, at their ends; one that lies beyond the edge says which way, and one whose label had to make room for
 * its neighbour's leads to it.
 */
function Labels({ lines, labels, x, height, em }: LabelsProps) {
  const middles = spreadLabels(
    lines.map(({ y }) => ({ y, height: em * labelHeight })),
    0,
    height,
  );
  return lines.map(({ of, y, beyond }, index) => {
    const middle = middles[index] ?? y;
    const isMoved = Math.abs(middle - y) > 2 && beyond === undefined;
    return (
      <g key={of}>
        {isMoved && <path d={`M${x - 8} ${y}L${x - 2} ${middle}`} className={styles[of]} />}
        <text x={x} y={middle + em * 0.35} fontSize={em} className={styles["label"]} data-of={of}>
          {labels.get(of)}
          {beyond === "up" ? " ↑" : beyond === "down" ? " ↓" : ""}
        </text>
      </g>
    );
  });
}
