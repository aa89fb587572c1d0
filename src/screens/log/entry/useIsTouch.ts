import { useMedia } from "#ui/useMedia.ts";

/** Whether the device is worked with fingers. */
export function useIsTouch(): boolean {
  return useMedia("(pointer: coarse)");
}
