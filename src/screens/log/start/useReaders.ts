import { useEffect, useState } from "react";
import type { Readers } from "./readers.ts";

/**
 * What reads a lap time as the entry line does, and a date, fetched once it is wanted: the first field of a session does
 * not wait for it. Undefined until it is there; a fetch that fails is tried again when the wanting changes.
 */
export function useReaders(isWanted: boolean): Readers | undefined {
  const [fetched, setFetched] = useState<Readers>();
  useEffect(() => {
    if (!isWanted) return;
    let isGone = false;
    import("./readers.ts").then(
      ({ readers }) => isGone || setFetched(readers),
      // The form says at its field that it cannot be read yet.
      () => undefined,
    );
    return () => {
      isGone = true;
    };
  }, [isWanted]);
  return fetched;
}
