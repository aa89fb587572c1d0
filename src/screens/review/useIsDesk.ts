import { breakpoints } from "#ui/breakpoints.ts";
import { useMedia } from "#ui/useMedia.ts";

/** Whether there is room for the questions beside the chart. */
export function useIsDesk(): boolean {
  return useMedia(`(min-width: ${breakpoints.desk}px)`);
}
