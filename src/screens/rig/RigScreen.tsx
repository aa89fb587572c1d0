import { useRef } from "react";
import { preferences, rigs } from "#db";
import type { CalendarDate, Preferences, RigSettings } from "#domain";
import { useFigures, useRows, useToday } from "#live";
import { goTo, printAddress, type RigAddress, useAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Part } from "#ui/Part.tsx";
import { HalfFilled } from "./HalfFilled.tsx";
import { NewRecord } from "./NewRecord.tsx";
import styles from "./Rig.module.css";
import { RigFront, RigWays } from "./RigFront.tsx";
import { RigPages } from "./RigPages.tsx";
import { RigRecord } from "./RigRecord.tsx";
import { RigTimeline } from "./RigTimeline.tsx";
import { rigFields } from "./rigFields.ts";
import { textKey } from "./rigTexts.ts";
import { type Placed, timeline } from "./timeline.ts";
import { WhatChanged } from "./WhatChanged.tsx";

/** Dated records of the rig: what is in force, what was before, and what changed between them. */
export function RigScreen() {
  const rows = useRows(async (book) => ({ chosen: await preferences(book), records: await rigs(book) }), []);
  const heading = useRef<HTMLHeadingElement>(null);
  return (
    <div className={styles["screen"]}>
      <h1 ref={heading} tabIndex={-1}>
        Rig
      </h1>
      {rows && <Records {...rows} onDone={() => heading.current?.focus()} />}
    </div>
  );
}

interface RecordsProps {
  readonly chosen: Preferences;
  readonly records: readonly RigSettings[];
  /** What had the focus is gone: work goes on at the top of the page. */
  readonly onDone: () => void;
}

function Records({ chosen, records, onDone }: RecordsProps) {
  const address = useAddress();
  const today = useToday(chosen);
  const placed = timeline(records, today);
  const inForce = placed.find((one) => one.isInForce);
  if (address.place !== "rig") return null;
  const { rigId, change, part } = address;
  const first = rigFields.find((field) => textKey(field) === change?.field);
  /** What a new record begins as. */
  const from = inForce?.rig ?? placed.at(-1)?.rig;
  const page = pageOf(address);
  if (page !== undefined)
    return <RigPages page={page} inForce={inForce?.rig} today={today} onDone={onDone} />;
  if (part === "record" || first !== undefined)
    return (
      <NewRecord
        key={first && textKey(first)}
        first={first}
        sessionId={change?.sessionId}
        from={from}
        today={today}
        onDone={onDone}
      />
    );
  if (change !== undefined) return <WhatChanged records={placed} sessionId={change.sessionId} />;
  return (
    <>
      <HalfFilled from={from} today={today} />
      {rigId !== undefined ? (
        <OneRecord
          shown={placed.find(({ rig }) => rig.id === rigId)}
          records={placed}
          today={today}
          onDone={onDone}
        />
      ) : records.length === 0 ? (
        <Introduction />
      ) : (
        <RigFront records={placed} today={today} />
      )}
    </>
  );
}

/** The page behind the front that the address names. */
function pageOf({ part, testId }: RigAddress) {
  if (testId !== undefined) return { testId };
  return part === undefined || part === "record" ? undefined : { part };
}

interface OneRecordProps {
  readonly shown: Placed | undefined;
  readonly records: readonly Placed[];
  readonly today: CalendarDate;
  readonly onDone: () => void;
}

function OneRecord({ shown, records, today, onDone }: OneRecordProps) {
  const { value: tests = [] } = useFigures("rigTestPages", {});
  return (
    <>
      <p>
        <a href={printAddress({ place: "rig" })}>Back to the rig</a>
      </p>
      {shown === undefined ? (
        <Notice>
          <p>The record this address names is not in the logbook. The others are below.</p>
        </Notice>
      ) : (
        <RigRecord
          key={shown.rig.id}
          placed={shown}
          records={records.map(({ rig: { id, from } }) => ({ id, from }))}
          today={today}
          inForce={records.find(({ isInForce }) => isInForce)?.rig}
          onNew={shown.isInForce ? () => goTo({ place: "rig", change: {} }) : undefined}
          isAskedFor
          onDone={onDone}
        />
      )}
      <RigTimeline records={records} tests={tests} shown={shown?.rig.id} today={today} />
    </>
  );
}

function Introduction() {
  return (
    <Part title="Nothing written down yet">
      <p>
        Write down once what you sit in front of: the screen and how far your eyes are from it, the field of
        view, the wheel and its force feedback, the pedals, the seat. Fill in what you know.
      </p>
      <p>
        When you change something, begin a new record: it starts as the one before, and that one stays. So you
        can see later what was different, and what became of your laps.
      </p>
      <p>
        <Button variant="primary" size="between" onClick={() => goTo({ place: "rig", part: "record" })}>
          Begin the first record
        </Button>
      </p>
      <p>Or begin with a sum; what it finds can be stored as the first record. A test needs no record.</p>
      <RigWays isFirst />
    </Part>
  );
}
