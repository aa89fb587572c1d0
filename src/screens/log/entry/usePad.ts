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
 * @param runId the run being driven
 * @param isAfterAnother a run stands before it, and it has no laps yet
 */
export function usePad(runId: Id | undefined, isAfterAnother: boolean): PadState {
  const isTouch = useIsTouch();
  const chosen = useDevice((device) => device.pad);
  const isThere = chosen === "shown" || (chosen === "auto" && isTouch);
  const [held, setHeld] = useState({ runId, isOpen: !isAfterAnother });
  if (held.runId !== runId) setHeld({ runId, isOpen: !isAfterAnother });
  const setOpen = (isOpen: boolean) => setHeld((now) => (now.isOpen === isOpen ? now : { runId, isOpen }));
  return { isThere, isOpen: isThere && held.isOpen, setOpen };
}
