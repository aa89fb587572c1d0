import type { ReactNode } from "react";
import { type AboutUnreadable, aboutUnreadable, type UnreadableRow } from "#db";
import { practiceDay, sayDate } from "#domain";
import { useLogbook, useRows } from "#live";
import { printAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { Notice } from "#ui/Notice.tsx";
import { BackupButton } from "./BackupButton.tsx";

/** Rows named at most; how many there are is said. */
const most = 3;

/** Which rows cannot be read, and what is without them. */
export function UnreadableRows({ rows }: { readonly rows: readonly UnreadableRow[] }) {
  const { surroundings } = useLogbook();
  const named = useRows(
    (book) => Promise.all(rows.slice(0, most).map((row) => aboutUnreadable(book, row))),
    [rows],
  );
  if (named === undefined) return null;
  const dayOf = (at: number) => sayDate(practiceDay(at, surroundings.zone(), 0));
  const [it, count] =
    rows.length === 1 ? ["it", "One row"] : ["them", `${rows.length.toLocaleString("en")} rows`];
  return (
    <div role="alert">
      <Notice
        tone="caution"
        actions={
          <>
            <BackupButton />
            <Button onClick={() => window.location.reload()}>Reload</Button>
          </>
        }
      >
        <p>
          <strong>{count} of this logbook cannot be read by this browser:</strong>
        </p>
        <ul>
          {named.map((one) => (
            <li key={`${one.table} ${one.id}`}>{sayOne(one, dayOf)}</li>
          ))}
          {rows.length > most && <li>and {(rows.length - most).toLocaleString("en")} more</li>}
        </ul>
        <p>
          All others are shown. Figures worked out now are without {it}, and so is a backup. Nothing was
          deleted: after a reload {it === "it" ? "it" : "they"} may be readable again, and an earlier backup
          may still hold {it}.
        </p>
      </Notice>
    </div>
  );
}

const things: Readonly<Record<string, string>> = {
  preferences: "the preferences",
  cars: "a car",
  tracks: "a track",
  layouts: "a track layout",
  combos: "a combo",
  pages: "a new page",
  references: "a reference lap",
  rigs: "rig settings",
  targets: "a target",
  forecasts: "a forecast",
  rigTests: "a rig test",
  cornerReviews: "a corner review",
  plans: "a plan",
};

/** "a run of the session of Wed 25 Nov 2026, Varnholt Ring · club hatch" */
function sayOne(one: AboutUnreadable, dayOf: (at: number) => string): ReactNode {
  const { table, id, sessionId, date, startedAt, comboName } = one;
  const thing = table === "runs" ? "a run" : table === "digests" ? "the stored figures" : undefined;
  const day = date === undefined ? startedAt !== undefined && `begun on ${dayOf(startedAt)}` : sayDate(date);
  if (sessionId === undefined)
    return (
      <>
        {things[table] ?? "a row of a newer version"} (row {id})
      </>
    );
  return (
    <>
      {thing && `${thing} of `}
      <a href={printAddress({ place: "log", sessionId })}>
        the session {day === false ? id : date === undefined ? day : `of ${day}`}
      </a>
      {comboName !== undefined && (
        <>
          , <Name>{comboName}</Name>
        </>
      )}
    </>
  );
}
