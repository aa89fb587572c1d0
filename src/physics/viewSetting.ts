import type { ScreenView } from "./screenView.ts";

/** What a simulator may ask for: across one screen, across all of them, or upright. */
export type AskedView = "one" | "all" | "upright";

/** The whole degrees to set a simulator to, so that the picture is as large as it would be outside; undefined where none fits. */
export function viewSetting(view: ScreenView, asked: AskedView): number | undefined {
  const degrees = {
    one: view.one.horizontal,
    all: view.all.horizontal,
    upright: view.drawnVertical,
  }[asked];
  return degrees === undefined ? undefined : Math.round(degrees);
}
