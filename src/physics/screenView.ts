import { type Figure, known } from "#domain";
import { curvedScreen } from "./curvedScreen.ts";
import { type FieldOfView, flatScreen } from "./flatScreen.ts";
import type { ScreenSetup } from "./screenSetup.ts";
import { threeScreens } from "./threeScreens.ts";
import { verticalFromHorizontal } from "./turnFieldOfView.ts";

/** What an eye sees of its screens, degrees. */
export interface ScreenView {
  /** The one screen, of three the middle one. */
  readonly one: FieldOfView;
  /** From outer edge to outer edge, bezels included; the same as `one` where there is no other. */
  readonly all: FieldOfView;
  /**
   * The upright angle that a simulator draws with the horizontal one of `one`, on a flat picture of that shape. On flat glass
   * it is the one that is seen. Undefined where a flat picture cannot be as wide: from 180° on.
   */
  readonly drawnVertical: number | undefined;
  /** Of three screens only. */
  readonly sides: SideScreens | undefined;
}

interface SideScreens {
  /** One side picture alone, without its bezel. */
  readonly each: number;
  /** The angle at which the eye stands square before each side screen: square, not widest. */
  readonly squareAngle: number;
}

/**
 * The field of view of whatever stands before the eye, as `flatScreen`, `threeScreens` and `curvedScreen` have it. Our methods,
 * §8.
 * @returns the reason that they give where nothing can be worked out
 * @throws RangeError for a NaN or an infinite value
 */
export function screenView(setup: ScreenSetup): Figure<ScreenView> {
  if (setup.kind === "three") {
    const seen = threeScreens(setup);
    if (!seen.known) return seen;
    const { horizontal, vertical, centre, eachSide, bestSideAngle } = seen.value;
    const sides = { each: eachSide, squareAngle: bestSideAngle };
    return known({
      one: { horizontal: centre, vertical },
      all: { horizontal, vertical },
      drawnVertical: vertical,
      sides,
    });
  }
  const seen =
    setup.kind === "curved" ? curvedScreen({ ...setup, arcWidth: setup.width }) : flatScreen(setup);
  if (!seen.known) return seen;
  const { value: one } = seen;
  const drawnVertical =
    one.horizontal < 180 ? verticalFromHorizontal(one.horizontal, [setup.width, setup.height]) : undefined;
  return known({ one, all: one, drawnVertical, sides: undefined });
}
