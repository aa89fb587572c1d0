import { useEffect, useRef } from "react";
import { addRig, preferences, rigs } from "#db";
import type { CalendarDate, Id, Preferences, RigSettings } from "#domain";
import { useRows, useToday } from "#live";
import { goTo, printAddress, type RigAddress, useAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Part } from "#ui/Part.tsx";
import styles from "./Rig.module.css";
import { RigForm } from "./RigForm.tsx";
import { RigFront, RigWays } from "./RigFront.tsx";
import { RigPages } from "./RigPages.tsx";
import { RigRecord } from "./RigRecord.tsx";
import { RigTimeline } from "./RigTimeline.tsx";
import { type RigField, rigFields } from "./rigFields.ts";
import { textKey, textsFrom } from "./rigTexts.ts";
import { type Placed, timeline } from "./timeline.ts";
import { useRigDraft } from "./useRigDraft.ts";
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
  const draft = useRigDraft("new");
  const placed = timeline(records, today);
  const inForce = placed.find((one) => one.isInForce);
  const wanted = address.place === "rig" ? address.rigId : undefined;
  const change = address.place === "rig" ? address.change : undefined;
  const first = rigFields.find((field) => textKey(field) === change?.field);
  const shown = placed.find(({ rig }) => rig.id === wanted);
  const begin = () => draft.begin(textsFrom(inForce?.rig ?? placed.at(-1)?.rig, today));
  // The address asks for the form: it is opened once, with what is in force.
  const isWanted = first !== undefined && draft.isRead && draft.open === undefined;
  useEffect(() => {
    if (isWanted) begin();
  });
  if (!draft.isRead || isWanted) return null;
  const page = address.place === "rig" ? pageOf(address) : undefined;
  if (page !== undefined)
    return <RigPages page={page} inForce={inForce?.rig} today={today} onDone={onDone} />;
  // Whoever asks for a record, or for what can change, gets that; the form stays where it is.
  const isElsewhere = wanted !== undefined || (change !== undefined && first === undefined);
  if (draft.open && !isElsewhere)
    return (
      <NewRecord
        draft={draft}
        first={first}
        sessionId={change?.sessionId}
        compared={inForce?.rig ?? placed.at(-1)?.rig}
        onDone={onDone}
      />
    );
  if (change !== undefined)
    return (
      <WhatChanged
        records={placed}
        sessionId={change.sessionId}
        onAll={() => {
          begin();
          goTo({ place: "rig" });
        }}
      />
    );
  if (records.length === 0)
    return (
      <>
        <HalfTyped of={draft.kept} />
        <Introduction onBegin={begin} />
      </>
    );
  return (
    <>
      <HalfTyped of={draft.kept} isFree={draft.open === undefined} />
      {draft.open && (
        <Notice>
          <p>
            A new record is half filled in. <a href={printAddress({ place: "rig" })}>Go on with it</a>
          </p>
        </Notice>
      )}
      {wanted === undefined ? (
        <RigFront records={placed} today={today} />
      ) : (
        <OneRecord shown={shown} records={placed} today={today} onDone={onDone} />
      )}
    </>
  );
}

/** The page behind the front that the address names. */
function pageOf({ part, testId }: RigAddress) {
  if (testId !== undefined) return { testId };
  return part === undefined ? undefined : { part };
}

interface OneRecordProps {
  readonly shown: Placed | undefined;
  readonly records: readonly Placed[];
  readonly today: CalendarDate;
  readonly onDone: () => void;
}

function OneRecord({ shown, records, today, onDone }: OneRecordProps) {
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
      <RigTimeline records={records} shown={shown?.rig.id} today={today} />
    </>
  );
}

interface NewRecordProps {
  readonly draft: ReturnType<typeof useRigDraft>;
  /** The field wanted first. */
  readonly first: RigField | undefined;
  /** The session to go back to. */
  readonly sessionId: Id | undefined;
  readonly compared: RigSettings | undefined;
  readonly onDone: () => void;
}

function NewRecord({ draft, first, sessionId, compared, onDone }: NewRecordProps) {
  const { open } = draft;
  if (open === undefined) return null;
  const leave = () => {
    // The address first: as long as it asks for the form, the form is opened.
    if (sessionId === undefined) goTo({ place: "rig" }, "replace");
    else goTo({ place: "log", sessionId });
    draft.forget();
    onDone();
  };
  const title = compared === undefined ? "The first record" : "Something changed";
  return (
    <RigForm
      key={first && textKey(first)}
      title={title}
      first={first}
      typed={open.typed}
      compared={compared}
      onCancel={leave}
      write={(book, fields) => addRig(book, { ...fields, id: open.id })}
      onStored={leave}
    />
  );
}

function Introduction({ onBegin }: { readonly onBegin: () => void }) {
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
        <Button variant="primary" size="between" onClick={onBegin}>
          Begin the first record
        </Button>
      </p>
      <p>Or begin with a sum; what it finds can be stored as the first record:</p>
      <RigWays isFirst />
    </Part>
  );
}
