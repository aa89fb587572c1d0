import { useEffect, useState } from "react";
import type { Readers } from "./readers.ts";

interface FetchedReaders {
  /** Undefined until they are there. */
  readonly readers: Readers | undefined;
  /** They are wanted, and have neither come nor failed to. */
  readonly isComing: boolean;
}

/**
 * What reads a lap time as the entry line does, and a date, fetched once it is wanted: the first field of a session does
 * not wait for it. A fetch that fails is tried again when the wanting changes.
 */
export function useReaders(isWanted: boolean): FetchedReaders {
  const [readers, setReaders] = useState<Readers>();
  const [hasFailed, setFailed] = useState(false);
  useEffect(() => {
    if (!isWanted) return;
    let isGone = false;
    setFailed(false);
    import("./readers.ts").then(
      (file) => isGone || setReaders(file.readers),
      // The form says at its field that it cannot be read yet.
      () => isGone || setFailed(true),
    );
    return () => {
      isGone = true;
    };
  }, [isWanted]);
  return { readers, isComing: isWanted && readers === undefined && !hasFailed };
}
