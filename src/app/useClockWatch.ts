import { useEffect } from "react";
import { practiceDay, sayDate } from "#domain";
import { useLogbook } from "#live";
import { useNotices } from "#state/notices.ts";

/** A clock is put right by some seconds now and then; more than this is worth a word. */
const worthSayingMs = 60_000;
const everyMs = 5000;

/**
 * Says when this device's clock went back: while the page is open, against a count that cannot go back, or since the
 * logbook was last opened. Laps keep their order whatever the clock does.
 */
export function useClockWatch(): void {
  const { entry, surroundings } = useLogbook();
  useEffect(() => {
    const { clock, zone } = surroundings;
    const tell = () => {
      const today = sayDate(practiceDay(clock(), zone(), 0));
      useNotices.getState().say({
        kind: "fault",
        text: `This device’s clock went back; it now says ${today}. Laps keep their order. If the date is wrong, set the clock right before the next session.`,
        actions: [],
      });
    };
    if (entry.lastOpened - clock() > worthSayingMs) tell();
    let ahead = clock() - performance.now();
    const watch = setInterval(() => {
      const now = clock() - performance.now();
      if (ahead - now > worthSayingMs) tell();
      ahead = now;
    }, everyMs);
    return () => clearInterval(watch);
  }, [entry.lastOpened, surroundings]);
}
