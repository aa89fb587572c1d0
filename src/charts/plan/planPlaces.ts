/** The lengths and angles that are typed on the drawing. */
export const planFields = ["width", "eyeDistance", "bezel", "sideAngle", "radius"] as const;
export type PlanField = (typeof planFields)[number];

/** A place in px. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** Where the figures of a drawing stand. */
export interface PlanPlaces {
  /** Middles of the upper edges of the fields laid over it, and the lines from them to what they measure. */
  readonly fields: Readonly<Partial<Record<PlanField, Place>>>;
  readonly leaders: readonly string[];
  /** Where a field's figure stands as text. */
  readonly texts: Readonly<
    Partial<Record<PlanField, Place & { readonly anchor: "start" | "middle" | "end" }>>
  >;
}

/** What is drawn, px. */
interface Drawing {
  readonly width: number;
  readonly em: number;
  readonly margin: number;
  /** Of the glass. */
  readonly top: number;
  /** From the glass to the eye. */
  readonly sightLength: number;
  /** The right end of the middle picture, or its joint. */
  readonly edge: Place;
  /** Of three screens: the left one and the right one. */
  readonly joints: readonly Place[];
  /** A place on curved glass, for its radius. */
  readonly onCurve: Place | undefined;
}

/** Size of a field laid over the drawing, em. */
export const fieldEms = { across: 9.5, up: 5 } as const;
/** Where on the line of sight its field stands, from the glass on: there is room between the lines to the edges. */
const FIELD_ON_LINE = 0.4;
/** The text of its length stands so far below the glass, where the lines to the edges are farthest apart: em. */
const TEXT_BELOW = 1.1;
/** A shorter line of sight has no room for a field, or for a text, above the angle at the eye: em. */
const leastSight = { field: 17.5, text: 5.6 } as const;
/** Between the glass and a line or a text above it: px, em. */
const ABOVE = { line: 5, text: 0.9 } as const;

/** Fields stand in a row above the glass, that of the distance on the line of sight; texts right at what they measure. */
export function planPlaces(drawing: Drawing): PlanPlaces {
  const { width, em, margin, top, sightLength, joints, onCurve } = drawing;
  const middle = width / 2;
  const [, right] = joints;
  const aside = besideMiddle(drawing);
  const ends = [middle - aside, middle + aside] as const;
  const below = margin + em * fieldEms.up;
  const leader = (from: number, to: Place) =>
    `M${rounded(from)} ${rounded(below)}L${to.x} ${rounded(to.y - ABOVE.line)}`;
  const row = (x: number): Place => ({ x: rounded(x), y: margin });
  const above = rounded(top - em * ABOVE.text);
  return {
    fields: {
      width: row(middle),
      ...distanceField(drawing, right ? ends[0] : middle),
      ...(right && { bezel: row(ends[0]), sideAngle: row(ends[1]) }),
      ...(onCurve && { radius: row(ends[1]) }),
    },
    leaders: [
      leader(middle, { x: middle, y: top }),
      ...joints.map((joint, index) => leader(ends[index === 0 ? 0 : 1], joint)),
      ...(onCurve ? [leader(ends[1], onCurve)] : []),
    ],
    texts: {
      width: { x: middle, y: above, anchor: "middle" },
      ...(sightLength >= em * leastSight.text && {
        eyeDistance: { x: middle, y: rounded(top + em * (TEXT_BELOW + 0.35)), anchor: "middle" },
      }),
      ...(right && {
        bezel: { x: rounded(width - right.x + em * 0.3), y: above, anchor: "end" },
        sideAngle: { x: rounded(right.x + em), y: above, anchor: "start" },
      }),
      ...(onCurve && { radius: { x: width - margin, y: above, anchor: "end" } }),
    },
  };
}

/** On the line of sight; where that is short, at the left of the row, and below the drawing where that has no room either. */
function distanceField(
  { width, em, margin, top, sightLength }: Drawing,
  leftmost: number,
): { readonly eyeDistance?: Place } {
  if (sightLength >= em * leastSight.field)
    return {
      eyeDistance: { x: width / 2, y: rounded(top + sightLength * FIELD_ON_LINE - (em * fieldEms.up) / 2) },
    };
  const x = leftmost - (fieldEms.across + 1) * em;
  return x < (fieldEms.across / 2) * em ? {} : { eyeDistance: { x: rounded(x), y: margin } };
}

/** How far from the middle the fields at the ends stand: at what they measure, but clear of the middle one and in the box. */
function besideMiddle({ width, em, edge, onCurve }: Drawing): number {
  const there = edge.x - width / 2 + (onCurve ? em * 4 : 0);
  return Math.min(Math.max((fieldEms.across + 1) * em, there), width / 2 - (fieldEms.across / 2) * em);
}

function rounded(px: number): number {
  return Math.round(px * 100) / 100;
}
