import { useEffect, useState } from "react";
import type { readTime } from "#entry";

/**
 * What reads a lap time as the entry line does, fetched once it is wanted: the first field of a session does not wait
 * for it. Undefined until it is there; a fetch that fails is tried again when the wanting changes.
 */
export function useTimeReader(isWanted: boolean): typeof readTime | undefined {
  const [reader, setReader] = useState<{ readonly read: typeof readTime }>();
  useEffect(() => {
    if (!isWanted) return;
    let isGone = false;
    import("#entry").then(
      ({ readTime: read }) => isGone || setReader({ read }),
      // The form says at its field that it cannot be read yet.
      () => undefined,
    );
    return () => {
      isGone = true;
    };
  }, [isWanted]);
  return reader?.read;
}
