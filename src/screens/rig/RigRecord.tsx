import { useEffect, useRef } from "react";
import { addRig, deleteRig, editRig } from "#db";
import type { CalendarDate, RigSettings } from "#domain";
import { useWrite } from "#live";
import { goTo, printAddress } from "#state/address.ts";
import type { RigRecordDay } from "#stats";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { sayRigName } from "#words";
import { BeforeAfter } from "./BeforeAfter.tsx";
import { CautionOf } from "./CautionOf.tsx";
import styles from "./Rig.module.css";
import { RigForm } from "./RigForm.tsx";
import { recordFrom } from "./recordFrom.ts";
import { type RigPart, rigFields, rigParts } from "./rigFields.ts";
import { textKey, textsOf } from "./rigTexts.ts";
import { nameOfReturn, rigChanges, saidOf } from "./rigWords.ts";
import { TrueToSize } from "./TrueToSize.tsx";
import { type Placed, sayWhen } from "./timeline.ts";
import { useRigDraft } from "./useRigDraft.ts";

interface RigRecordProps {
  readonly placed: Placed;
  readonly today: CalendarDate;
  /** All records in their order. */
  readonly records: readonly RigRecordDay[];
  /** What the rig could go back from; undefined where none is in force. */
  readonly inForce: RigSettings | undefined;
  /** Begins a new record made from the one in force; absent while another form is open. */
  readonly onNew: (() => void) | undefined;
  /** A link led to this record: it is gone to. */
  readonly isAskedFor: boolean;
  /** The form or the record that had the focus is gone. */
  readonly onDone: () => void;
}

/** One record: what is known of the rig, when it holds, and the ways to put it right. */
export function RigRecord({ placed, today, records, inForce, onNew, isAskedFor, onDone }: RigRecordProps) {
  const { rig } = placed;
  const write = useWrite();
  const draft = useRigDraft(rig.id);
  const seen = useRef(rig);
  const title = useRef<HTMLSpanElement>(null);
  const isGoneTo = useRef(false);
  useEffect(() => {
    if (!isAskedFor || !draft.isRead || isGoneTo.current) return;
    isGoneTo.current = true;
    title.current?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }, [isAskedFor, draft.isRead]);
  const close = () => {
    draft.forget();
    onDone();
  };
  if (draft.open)
    return (
      <RigForm
        title="Correct this record"
        typed={draft.open.typed}
        old={rig}
        compared={rig}
        onCancel={close}
        write={(book, patch) => editRig(book, { id: rig.id, patch, expected: seen.current })}
        onStored={close}
      />
    );
  const remove = async () => {
    if (!(await write((book) => deleteRig(book, rig.id), { isUndoOffered: true }))) return;
    goTo({ place: "rig" }, "replace");
    onDone();
  };
  const goBack = async () => {
    const again = recordFrom(rig, { from: today, name: nameOfReturn(rig) });
    if (!(await write((book) => addRig(book, again), { isUndoOffered: true }))) return;
    goTo({ place: "rig" });
    onDone();
  };
  return (
    <Part
      title={
        <span ref={title} tabIndex={-1}>
          <Name>{sayRigName(rig)}</Name>
        </span>
      }
      ruled
      aside={sayWhen(placed, today)}
    >
      <HalfTyped of={draft.kept} />
      <ButtonRow
        others={
          <Button
            size="between"
            onClick={() => {
              seen.current = rig;
              draft.begin(textsOf(rig));
            }}
          >
            Correct this record
          </Button>
        }
        main={
          onNew ? (
            <Button variant="primary" size="between" onClick={onNew}>
              Something changed
            </Button>
          ) : (
            isToGoBackTo(placed, inForce, today) && (
              <Button variant="primary" size="between" onClick={() => void goBack()}>
                Go back to these settings
              </Button>
            )
          )
        }
      />
      {placed.before !== undefined && rig.from <= today && (
        <BeforeAfter rigId={rig.id} records={records} today={today} />
      )}
      <div className={styles["parts"]}>
        {(Object.keys(rigParts) as RigPart[]).map((part) => (
          <RigPartShown key={part} part={part} placed={placed} />
        ))}
      </div>
      {rig.note !== "" && (
        <p className={styles["words"]}>
          <Name>{rig.note}</Name>
        </p>
      )}
      <p>
        <Button size="between" variant="caution" onClick={() => void remove()}>
          Delete this record
        </Button>
      </p>
    </Part>
  );
}

/** An old record that says something else than what is in force. */
function isToGoBackTo({ rig, isInForce }: Placed, inForce: RigSettings | undefined, today: CalendarDate) {
  return !isInForce && rig.from < today && inForce !== undefined && rigChanges(inForce, rig).length > 0;
}

function RigPartShown({ part, placed }: { readonly part: RigPart; readonly placed: Placed }) {
  const lines = rigFields.flatMap((field) => {
    const said = field.part === part ? saidOf(placed.rig, field) : undefined;
    return said === undefined ? [] : [{ field, said }];
  });
  if (lines.length === 0 && part !== "wheel" && part !== "view") return null;
  return (
    <Part title={rigParts[part]} level={3}>
      {lines.length === 0 ? (
        <p className={styles["soft"]}>nothing written down</p>
      ) : (
        <dl className={styles["lines"]}>
          {lines.map(({ field, said }) => (
            <div key={textKey(field)} className={styles["line"]}>
              <dt>
                {placed.isInForce ? (
                  <a
                    href={printAddress({ place: "rig", change: { field: textKey(field) } })}
                    aria-label={`${field.label}: it has changed`}
                  >
                    {field.label}
                  </a>
                ) : (
                  field.label
                )}
              </dt>
              <dd className={field.kind === "words" ? styles["words"] : undefined}>
                {field.kind === "words" ? <Name>{said}</Name> : said}
              </dd>
            </div>
          ))}
        </dl>
      )}
      {part === "view" && <TrueToSize screen={placed.rig.screen} />}
      <CautionOf part={part} torque={placed.rig.wheel?.torque} />
    </Part>
  );
}
