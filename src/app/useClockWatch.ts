import { useEffect } from "react";
import { LedgerFault, noteClock } from "#db";
import { useLogbook } from "#live";
import { useNotices } from "#state/notices.ts";
import { type ClockJump, clockNotice, isWorthSaying } from "./clockNotice.ts";

const everyMs = 5000;

/**
 * Says once when this device's clock jumped: while the page is open, against a count that no setting of the clock moves,
 * or since the logbook was last opened. A jump seen while open is noted, so that the next opening measures from there.
 */
export function useClockWatch(): void {
  const { entry, shelf, surroundings } = useLogbook();
  useEffect(() => {
    const { clock, zone } = surroundings;
    const { say } = useNotices.getState();
    const tell = (jump: ClockJump) => isWorthSaying(jump) && say(clockNotice(jump, zone()));
    // A logbook opened for the first time has been open never before.
    if (entry.openedOn.length > 0) tell({ seen: "opening", before: entry.lastOpened, now: clock() });
    let last = { clock: clock(), count: performance.now() };
    const watch = setInterval(() => {
      const [now, count] = [clock(), performance.now()];
      const before = last.clock + (count - last.count);
      last = { clock: now, count };
      if (!tell({ seen: "open", before, now })) return;
      noteClock(shelf, entry.name).catch((fault: unknown) => {
        if (!(fault instanceof LedgerFault)) throw fault;
        say({ kind: "fault", text: fault.message, actions: [] });
      });
    }, everyMs);
    return () => clearInterval(watch);
  }, [entry, shelf, surroundings]);
}
