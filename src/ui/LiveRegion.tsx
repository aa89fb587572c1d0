import { Spoken } from "./Spoken.tsx";

export interface LiveRegionProps {
  /** One message an act; empty while there is nothing to say. */
  readonly message: string;
  /** True only for "not stored": it interrupts. */
  readonly urgent?: boolean;
}

/** Reads a message out without moving the focus. Keep it mounted: a region must be there before its text. */
export function LiveRegion({ message, urgent = false }: LiveRegionProps) {
  return (
    <div role={urgent ? "alert" : "status"} aria-atomic="true">
      <Spoken>{message}</Spoken>
    </div>
  );
}
