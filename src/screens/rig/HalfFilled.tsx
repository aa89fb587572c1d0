import type { CalendarDate, RigSettings } from "#domain";
import { printAddress } from "#state/address.ts";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Notice } from "#ui/Notice.tsx";
import { textsFrom } from "./rigTexts.ts";
import { useNewRecord } from "./useNewRecord.ts";

interface HalfFilledProps {
  readonly from: RigSettings | undefined;
  readonly today: CalendarDate;
}

/** The way back to a new record that was begun and not stored. */
export function HalfFilled({ from, today }: HalfFilledProps) {
  const { kept, isTouched } = useNewRecord(undefined, textsFrom(from, today));
  return (
    <>
      <HalfTyped of={kept} />
      {isTouched && (
        <Notice>
          <p>
            A new record is half filled in.{" "}
            <a href={printAddress({ place: "rig", part: "record" })}>Go on with it</a>
          </p>
        </Notice>
      )}
    </>
  );
}
