import { type Figure, known } from "#domain";
import { curvedScreen } from "./curvedScreen.ts";
import { flatScreen } from "./flatScreen.ts";
import type { ScreenSetup } from "./screenSetup.ts";
import { threeScreens } from "./threeScreens.ts";
import { verticalFromHorizontal } from "./turnFieldOfView.ts";

/** From edge to edge, degrees; the upright angle is undefined where the height is not known. */
interface SeenAngles {
  readonly horizontal: number;
  readonly vertical: number | undefined;
}

/** What an eye sees of its screens, degrees. */
export interface ScreenView {
  /** The one screen, of three the middle one. */
  readonly one: SeenAngles;
  /** From outer edge to outer edge, bezels included; the same as `one` where there is no other. */
  readonly all: SeenAngles;
  /**
   * The upright angle that a simulator draws with the horizontal one of `one`, on a flat picture of that shape. On flat glass
   * it is the one that is seen. Undefined without a height, and where no flat picture can be as wide: from 180° on.
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
  const { width } = setup;
  // Only upright angles depend on the height: without one they are worked out from any, and not told.
  const height = setup.height ?? width;
  const told = (degrees: number) => (setup.height === undefined ? undefined : degrees);
  if (setup.kind === "three") {
    const seen = threeScreens({ ...setup, height });
    if (!seen.known) return seen;
    const { horizontal, centre, eachSide, bestSideAngle } = seen.value;
    const vertical = told(seen.value.vertical);
    return known({
      one: { horizontal: centre, vertical },
      all: { horizontal, vertical },
      drawnVertical: vertical,
      sides: { each: eachSide, squareAngle: bestSideAngle },
    });
  }
  const seen =
    setup.kind === "curved"
      ? curvedScreen({ ...setup, height, arcWidth: width })
      : flatScreen({ ...setup, height });
  if (!seen.known) return seen;
  const { horizontal } = seen.value;
  const one = { horizontal, vertical: told(seen.value.vertical) };
  const drawnVertical =
    horizontal < 180 ? told(verticalFromHorizontal(horizontal, [width, height])) : undefined;
  return known({ one, all: one, drawnVertical, sides: undefined });
}
