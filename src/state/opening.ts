import { create } from "zustand";

/** How it stands with a logbook that is being opened. */
interface Opening {
  /** Another tab holds it open in an older version; opening goes on by itself when that tab is closed. */
  readonly isBlocked: boolean;
}

export const useOpening = create<Opening>(() => ({ isBlocked: false }));
