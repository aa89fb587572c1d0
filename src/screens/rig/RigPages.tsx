import { type ComponentType, lazy, Suspense } from "react";
import type { CalendarDate, RigSettings } from "#domain";
import { goTo, printAddress, type RigPart } from "#state/address.ts";

interface PageProps {
  readonly inForce: RigSettings | undefined;
  readonly today: CalendarDate;
  readonly onStored: () => void;
}

const pages: Readonly<Partial<Record<RigPart, ComponentType<PageProps>>>> = {
  screen: lazy(async () => ({ default: (await import("./screen/ScreenSum.tsx")).ScreenSum })),
  wheel: lazy(async () => ({ default: (await import("./wheel/WheelSum.tsx")).WheelSum })),
};

interface RigPagesProps {
  readonly part: RigPart;
  readonly inForce: RigSettings | undefined;
  readonly today: CalendarDate;
  /** What had the focus is gone. */
  readonly onDone: () => void;
}

/** The pages behind the front of the rig, each with the way back. */
export function RigPages({ part, inForce, today, onDone }: RigPagesProps) {
  const Page = pages[part];
  const onStored = () => {
    goTo({ place: "rig" }, "replace");
    onDone();
  };
  return (
    <>
      <p>
        <a href={printAddress({ place: "rig" })}>Back to the rig</a>
      </p>
      <Suspense fallback={<p>Opening</p>}>
        {Page && <Page inForce={inForce} today={today} onStored={onStored} />}
      </Suspense>
    </>
  );
}
