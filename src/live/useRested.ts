import { useEffect, useRef, useState } from "react";

/**
 * A value once it has rested: however fast the keys, what is worked out from it is asked for once.
 * @param value plain data
 */
export function useRested<T>(value: T, restMs: number): T {
  const [rested, setRested] = useState(value);
  const latest = useRef(value);
  latest.current = value;
  const text = JSON.stringify(value);
  useEffect(() => {
    // Named, for a value of another text is another one.
    void text;
    const clock = setTimeout(() => setRested(latest.current), restMs);
    return () => clearTimeout(clock);
  }, [text, restMs]);
  return rested;
}
