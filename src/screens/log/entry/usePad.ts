import { useState } from "react";
import type { Id } from "#domain";
import { useDevice } from "#state/device.ts";
import { useIsTouch } from "./useIsTouch.ts";

/** The pad of keys under the entry line. */
export interface PadState {
  /** This device has one. */
  readonly isThere: boolean;
  /** It stands open; else the entry line stands alone. */
  readonly isOpen: boolean;
  readonly setOpen: (isOpen: boolean) => void;
}

/**
 * Whether the pad stands open. The driver opens and closes it; a run that follows another one begins with the entry line
 * alone, so that what the run before said can be read.
 * @param about the run being driven, or the lap being edited
 * @param isAfterAnother a run stands before it, and it has no laps yet
 */
export function usePad(about: Id | undefined, isAfterAnother = false): PadState {
  const isTouch = useIsTouch();
  const chosen = useDevice((device) => device.pad);
  const isThere = chosen === "shown" || (chosen === "auto" && isTouch);
  const [held, setHeld] = useState({ about, isOpen: !isAfterAnother });
  if (held.about !== about) setHeld({ about, isOpen: !isAfterAnother });
  const setOpen = (isOpen: boolean) => setHeld((now) => (now.isOpen === isOpen ? now : { about, isOpen }));
  return { isThere, isOpen: isThere && held.isOpen, setOpen };
}
