import { useEffect, useState } from "react";
import { useLogbook } from "./logbookContext.ts";

const minute = 60_000;

/** The time now, looked at again every minute and whenever the page is looked at again. */
export function useNow(): number {
  const { clock } = useLogbook().surroundings;
  const [now, setNow] = useState(clock);
  useEffect(() => {
    const look = () => setNow(clock());
    const timer = setInterval(look, minute);
    document.addEventListener("visibilitychange", look);
    return () => {
      clearInterval(timer);
      document.removeEventListener("visibilitychange", look);
    };
  }, [clock]);
  return now;
}
