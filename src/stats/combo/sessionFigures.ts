import type { AskedFigure } from "#domain";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { figureForTarget, type TargetFigure } from "./figureForTarget.ts";

/** The figure of a target in one session, and when that was. */
export interface SessionFigure extends TargetFigure {
  readonly session: SessionDigest;
}

/**
 * The figure that each session gives a target of a mean, a scatter or a share of clean laps, in the order given; a session that
 * has none is left out. A level belongs to no session.
 */
export function sessionFigures(
  target: AskedFigure,
  page: readonly SessionDigest[],
): readonly SessionFigure[] {
  return page.flatMap((session) => {
    const figure = figureForTarget(target, [session], () => undefined);
    return figure === undefined ? [] : [{ ...figure, session }];
  });
}
