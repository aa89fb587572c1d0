import { type Id, type RigSettings, sayDate } from "#domain";
import { printAddress } from "#state/address.ts";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import styles from "./Rig.module.css";
import { isAsked, type RigPart, rigFields, rigParts } from "./rigFields.ts";
import { textKey } from "./rigTexts.ts";
import { saidOf } from "./rigWords.ts";

interface WhatChangedProps {
  /** The record in force. */
  readonly rig: RigSettings | undefined;
  /** The session to go back to. */
  readonly sessionId: Id | undefined;
}

/** The values of the rig, to pick the one that has changed; those that are written down first. */
export function WhatChanged({ rig, sessionId }: WhatChangedProps) {
  const back = { ...(sessionId !== undefined && { sessionId }) };
  const parts = (Object.keys(rigParts) as RigPart[]).map((part) => ({
    part,
    fields: rigFields
      .filter((field) => field.part === part && isAsked(field, rig?.screen.kind))
      .map((field) => ({ field, said: rig && saidOf(rig, field) }))
      .sort((a, b) => Number(b.said !== undefined) - Number(a.said !== undefined)),
  }));
  return (
    <Part title="What changed?" ruled aside={rig && `In force since ${sayDate(rig.from)}`}>
      <div className={styles["parts"]}>
        {parts.map(({ part, fields }) => (
          <Part key={part} title={rigParts[part]} level={3}>
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
