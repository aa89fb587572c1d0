import { toRadians } from "./angles.ts";
import type { Point } from "./halfCorner.ts";
import type { ScreenSetup } from "./screenSetup.ts";

/** A straight piece seen from above. */
export interface PlanLine {
  readonly from: Point;
  readonly to: Point;
}

/** A picture seen from above, from its left edge to its right one. */
export interface PlanGlass extends PlanLine {
  /** Of curved glass: where its circle has its middle, and how far that is. */
  readonly curve: { readonly centre: Point; readonly radius: number } | undefined;
}

/** Screens seen from above, metres: the eye is (0, 0) and looks along +y, x to its right. */
export interface ScreenPlan {
  /** From the left to the right; of three the middle one is the second. */
  readonly glass: readonly PlanGlass[];
  /** The frames at the joints of three screens; those without a width are left out. */
  readonly frames: readonly PlanLine[];
  /** Where the planes of three screens meet: the left joint and the right one. */
  readonly hinges: readonly Point[];
  /** Whether all of the glass is there: of more than half a circle only half a circle is. */
  readonly isWhole: boolean;
}

/**
 * Where the screens stand, to be drawn. It asks no question: what cannot be is placed as the figures say, as far as there is a
 * place for it. Our methods, §8.
 */
export function screenPlan(setup: ScreenSetup): ScreenPlan {
  if (setup.kind === "curved") return curvedPlan(setup);
  const { width, distance } = setup;
  const middle = { from: [-width / 2, distance], to: [width / 2, distance], curve: undefined } as const;
  if (setup.kind === "flat") return { glass: [middle], frames: [], hinges: [], isWhole: true };
  const { bezel, sideAngle } = setup;
  const turn = toRadians(sideAngle);
  const hinge: Point = [width / 2 + bezel, distance];
  const along = (metres: number): Point => [
    hinge[0] + metres * Math.cos(turn),
    hinge[1] - metres * Math.sin(turn),
  ];
  const right: PlanLine = { from: along(bezel), to: along(bezel + width) };
  const frames: readonly PlanLine[] = [
    { from: middle.to, to: hinge },
    { from: hinge, to: right.from },
  ];
  return {
    glass: [{ ...mirrored(right), curve: undefined }, middle, { ...right, curve: undefined }],
    frames: bezel > 0 ? [...frames.map(mirrored), ...frames] : [],
    hinges: [over(hinge), hinge],
    isWhole: true,
  };
}

function curvedPlan(screen: Extract<ScreenSetup, { readonly kind: "curved" }>): ScreenPlan {
  const { width, distance, radius } = screen;
  const wanted = width / (2 * radius);
  const half = Math.min(wanted, Math.PI / 2);
  const to: Point = [radius * Math.sin(half), distance - radius * (1 - Math.cos(half))];
  const curve = { centre: [0, distance - radius], radius } as const;
  return { glass: [{ from: over(to), to, curve }], frames: [], hinges: [], isWhole: wanted <= Math.PI / 2 };
}

/** On the other side of the line of sight. */
const over = ([x, y]: Point): Point => [-x, y];

/** The same on the other side, from the left to the right again. */
const mirrored = ({ from, to }: PlanLine): PlanLine => ({ from: over(to), to: over(from) });
