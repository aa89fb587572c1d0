import { useEffect } from "react";
import { useLogbook } from "#live";
import { useNotices } from "#state/notices.ts";

/** Chores wait until the page has been drawn and the first laps can be typed. */
const restMs = 1500;

/** What the app does by itself after opening: figures of sessions that were restored or merged are worked out. */
export function useChores(): void {
  const { book, ask } = useLogbook();
  const say = useNotices((notices) => notices.say);
  useEffect(() => {
    const clock = setTimeout(() => {
      ask(book, "freshen", null).catch((fault: Error) =>
        say({
          kind: "fault",
          text: `Figures of old sessions were not renewed: ${fault.message}`,
          actions: [],
        }),
      );
    }, restMs);
    return () => clearTimeout(clock);
  }, [book, ask, say]);
}
