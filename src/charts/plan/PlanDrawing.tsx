import { type PointerEvent, type ReactNode, useRef, useState } from "react";
import { Picture } from "../frame/Picture.tsx";
import { useRoom } from "../frame/useRoom.ts";
import { type DrawnPlan, layPlan, type PlanFrame } from "./layPlan.ts";
import styles from "./PlanDrawing.module.css";
import { type Place, type PlanField, planFields } from "./planPlaces.ts";

interface PlanDrawingProps {
  readonly drawn: DrawnPlan;
  /** The same in words. */
  readonly label: string;
  /** What stands on the drawing where a field does not: on a phone, and on paper. */
  readonly texts: Readonly<Partial<Record<PlanField, string | undefined>>>;
  /** Some of what is drawn is only taken to be so. */
  readonly isPale: boolean;
  /** A hand moves the eye, or turns a side screen: metres, degrees. */
  readonly onDistance: (metres: number) => void;
  readonly onSideAngle: (degrees: number) => void;
  /** The fields; `at` gives where one is laid over the drawing, undefined where all stand below it. */
  readonly children: (at: (field: PlanField) => Place | undefined) => ReactNode;
}

/** What a hand has hold of: the picture does not change its scale, and the handle stays where it is under the finger. */
interface Held {
  readonly frame: PlanFrame;
  readonly beside: Place;
}

/** From so wide on fields are laid over the drawing: em of its small text. */
const OVERLAID_EMS = 36;
const HANDLE = { drawn: 7, held: 22 } as const;

/** Screens and eye from above, to scale. It is the form: fields stand where the lengths are, and it follows a hand. */
export function PlanDrawing(props: PlanDrawingProps) {
  const { drawn, label, texts, isPale, onDistance, onSideAngle, children } = props;
  const { box, square, room } = useRoom();
  const svg = useRef<SVGSVGElement>(null);
  const [held, setHeld] = useState<Held>();
  const { width, em } = room;
  const isOverlaid = width >= OVERLAID_EMS * em;
  const laid = layPlan(drawn, width, em, isOverlaid, held?.frame);
  const { head, eye, outer } = laid;
  const pointAt = (event: PointerEvent): Place => {
    const corner = svg.current?.getBoundingClientRect();
    return { x: event.clientX - (corner?.left ?? 0), y: event.clientY - (corner?.top ?? 0) };
  };
  const handOn = (handle: Place, follow: (place: Place) => void) => ({
    onPointerDown: (event: PointerEvent<SVGElement>) => {
      if (!event.isPrimary || event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      const { x, y } = pointAt(event);
      setHeld({ frame: laid.frame, beside: { x: x - handle.x, y: y - handle.y } });
    },
    onPointerMove: (event: PointerEvent<SVGElement>) => {
      if (held === undefined) return;
      const { x, y } = pointAt(event);
      follow({ x: x - held.beside.x, y: y - held.beside.y });
    },
    onPointerUp: () => setHeld(undefined),
    onPointerCancel: () => setHeld(undefined),
  });
  return (
    <Picture box={box} square={square}>
      <div className={styles["plan"]} data-overlaid={isOverlaid} data-pale={isPale}>
        <svg
          ref={svg}
          role="img"
          aria-label={label}
          width={width}
          height={laid.height}
          viewBox={`0 0 ${width} ${laid.height}`}
          className={styles["drawing"]}
        >
          {laid.sight.map((path) => (
            <path key={path} d={path} className={styles["sight"]} />
          ))}
          <path d={laid.ahead} className={styles["ahead"]} />
          {laid.radius !== undefined && <path d={laid.radius} className={styles["ahead"]} />}
          {laid.turn !== undefined && <path d={laid.turn} className={styles["arc"]} />}
          {isOverlaid &&
            laid.leaders.map((path) => <path key={path} d={path} className={styles["leader"]} />)}
          {laid.sweep !== undefined && <path d={laid.sweep} className={styles["arc"]} />}
          {laid.frames.map((path) => (
            <path key={path} d={path} className={styles["frame"]} />
          ))}
          {laid.glass.map((path) => (
            <path key={path} d={path} className={styles["glass"]} />
          ))}
          <g fontSize={em}>
            {laid.angles.map(({ x, y, text }) => (
              <text key={`${x} ${text}`} x={x} y={y} textAnchor="middle" className={styles["angle"]}>
                {text}
              </text>
            ))}
            {planFields.map((field) => {
              const [at, text] = [laid.texts[field], texts[field]];
              return at === undefined || text === undefined ? null : (
                <text key={field} x={at.x} y={at.y} textAnchor={at.anchor} className={styles["length"]}>
                  {text}
                </text>
              );
            })}
          </g>
          <g
            data-handle
            className={styles["handle"]}
            {...handOn(eye, (place) => onDistance(laid.distanceAt(place)))}
          >
            <circle cx={head.at.x} cy={head.at.y} r={head.radius} className={styles["head"]} />
            <path
              d={`M${eye.x} ${eye.y - 11}v22M${eye.x - 5} ${eye.y - 6}l5 -5l5 5M${eye.x - 5} ${eye.y + 6}l5 5l5 -5`}
              className={styles["grip"]}
            />
            <circle cx={eye.x} cy={eye.y} r={HANDLE.held} className={styles["reach"]} />
          </g>
          {outer && (
            <g
              data-handle
              className={styles["handle"]}
              {...handOn(outer, (place) => onSideAngle(laid.sideAngleAt(place)))}
            >
              <circle cx={outer.x} cy={outer.y} r={HANDLE.drawn} className={styles["knob"]} />
              <circle cx={outer.x} cy={outer.y} r={HANDLE.held} className={styles["reach"]} />
            </g>
          )}
        </svg>
        {children((field) => (isOverlaid ? laid.fields[field] : undefined))}
      </div>
    </Picture>
  );
}
