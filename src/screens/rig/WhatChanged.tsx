import { type Id, sayDate } from "#domain";
import { printAddress } from "#state/address.ts";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import styles from "./Rig.module.css";
import { isAsked, type RigField, type RigPart, rigFields, rigParts } from "./rigFields.ts";
import { textKey } from "./rigTexts.ts";
import { isNote, saidOf } from "./rigWords.ts";
import type { Placed } from "./timeline.ts";

interface WhatChangedProps {
  /** All records in their order, the one in force among them. */
  readonly records: readonly Placed[];
  /** The session to go back to. */
  readonly sessionId: Id | undefined;
}

/** The values of the rig, to pick the one that has changed: those that have changed before, then part by part. */
export function WhatChanged({ records, sessionId }: WhatChangedProps) {
  const rig = records.find(({ isInForce }) => isInForce)?.rig;
  const back = { ...(sessionId !== undefined && { sessionId }) };
  const asked = rigFields.filter((field) => isAsked(field, rig?.screen.kind));
  const again = asked.filter((field) => records.some((placed) => hasChanged(field, placed)));
  const inPart = (part: RigPart) => asked.filter((field) => field.part === part && !again.includes(field));
  const parts = [
    { title: "Changed before", of: again },
    ...(Object.keys(rigParts) as RigPart[]).map((part) => ({ title: rigParts[part], of: inPart(part) })),
  ]
    .filter(({ of }) => of.length > 0)
    .map(({ title, of }) => ({
      title,
      fields: of
        .map((field) => ({ field, said: rig && saidOf(rig, field) }))
        .sort((a, b) => Number(b.said !== undefined) - Number(a.said !== undefined)),
    }));
  return (
    <Part title="What changed?" ruled aside={rig && `In force since ${sayDate(rig.from)}`}>
      <p>
        <a className={styles["date"]} href={printAddress({ place: "rig", part: "record" })}>
          Several things: all fields
        </a>
      </p>
      <div className={styles["parts"]}>
        {parts.map(({ title, fields }) => (
          <Part key={title} title={title} level={3}>
            <ul className={styles["picks"]}>
              {fields.map(({ field, said }) => (
                <li key={textKey(field)}>
                  <a href={printAddress({ place: "rig", change: { field: textKey(field), ...back } })}>
                    <span>{field.label}</span>
                    {said !== undefined && (
                      <span className={styles["clamped"]}>
                        <Name>{said}</Name>
                      </span>
                    )}
                  </a>
                </li>
              ))}
            </ul>
          </Part>
        ))}
      </div>
      <p>
        <a href={printAddress(sessionId === undefined ? { place: "rig" } : { place: "log", sessionId })}>
          {sessionId === undefined ? "Back to the rig" : "Back to the session"}
        </a>
      </p>
    </Part>
  );
}

/** Whether a record changed a value of the one before it. */
function hasChanged(field: RigField, { rig, before }: Placed): boolean {
  if (before === undefined || isNote(field)) return false;
  return saidOf(before, field) !== saidOf(rig, field);
}
