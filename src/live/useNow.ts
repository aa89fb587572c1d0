import { useEffect, useState } from "react";
import { eachMinute } from "./eachMinute.ts";
import { useLogbook } from "./logbookContext.ts";

/** The time now, looked at again every minute and whenever the page is looked at again. */
export function useNow(): number {
  const { clock } = useLogbook().surroundings;
  const [now, setNow] = useState(clock);
  useEffect(() => eachMinute(() => setNow(clock())), [clock]);
  return now;
}
