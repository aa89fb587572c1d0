import { useState } from "react";
import type { ShelvedLogbook } from "#db";
import { type GoesWithDemo, useLeaveDemo, useLoadDemo, useRemoveLogbook } from "#live";
import { goTo } from "#state/address.ts";
import { demoAddress } from "#state/demoAddress.ts";
import { Button } from "#ui/Button.tsx";
import { Part } from "#ui/Part.tsx";
import { pageHeading } from "#ui/pageHeading.ts";
import { untilDeed } from "#ui/untilDeed.ts";
import { LeaveDemoDialog } from "./LeaveDemoDialog.tsx";

interface DemoPartProps {
  readonly demo: ShelvedLogbook | undefined;
  /** The driver's own logbooks, the one opened last first. */
  readonly own: readonly ShelvedLogbook[];
}

/** A made-up driver's twelve weeks, to look around in: loaded and removed with one button each. */
export function DemoPart({ demo, own }: DemoPartProps) {
  const { load, isLoading } = useLoadDemo(demoAddress, toLog);
  const remove = useRemoveLogbook();
  const { look, moveAndRemove } = useLeaveDemo(demoAddress);
  const [isLooking, setLooking] = useState(false);
  const [found, setFound] = useState<GoesWithDemo>();
  const leave = async (logbook: ShelvedLogbook) => {
    setLooking(true);
    const typed = await look(logbook);
    setLooking(false);
    if (typed === undefined) return;
    if (typed.laps + typed.others + typed.changed + typed.halfTyped.length > 0) setFound(typed);
    else await remove(logbook);
  };
  return (
    <Part title="Demo" ruled>
      <p>
        Twelve weeks of a made-up club racer, as a logbook of its own. Your own logbooks are not touched by
        it. Should you type laps in it, they can move to a logbook of your own before it goes.
      </p>
      <p>
        {demo === undefined ? (
          <Button size="between" disabled={isLoading} onClick={load}>
            Load the demo logbook
          </Button>
        ) : (
          <Button size="between" disabled={isLooking} onClick={() => void leave(demo)}>
            Remove the demo logbook
          </Button>
        )}
      </p>
      {demo !== undefined && found !== undefined && (
        <LeaveDemoDialog
          found={found}
          own={own}
          onClose={() => setFound(undefined)}
          onMove={(to) => moveAndRemove(demo, to)}
          onRemove={() => {
            setFound(undefined);
            void remove(demo);
          }}
        />
      )}
    </Part>
  );
}

/**
 * To the beginning of Log, as from the first page. The whole page is drawn anew with the demo: the focus waits for the
 * heading, until the driver does anything.
 */
function toLog(): void {
  const before = pageHeading();
  const observer = new MutationObserver(() => {
    const heading = pageHeading();
    if (heading === null || heading === before) return;
    end();
    if (document.activeElement === document.body) heading.focus({ preventScroll: true });
  });
  const stop = untilDeed(window, () => observer.disconnect());
  const end = () => {
    observer.disconnect();
    stop();
  };
  observer.observe(document.body, { childList: true, subtree: true });
  goTo({ place: "log" });
}
