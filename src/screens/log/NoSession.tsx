import { sessionsOpen } from "#db";
import { useRows, useUnreadable, useUntil } from "#live";
import { printAddress } from "#state/address.ts";

/** The address names a session that this logbook does not have, or cannot read. */
export function NoSession() {
  const isDamaged = useUnreadable().length > 0;
  const until = useUntil();
  const open = useRows(async (book) => (await sessionsOpen(book, until))[0] ?? null, [until]);
  return (
    <>
      <h1>This session {isDamaged ? "cannot be shown" : "is not there"}</h1>
      <p>
        {isDamaged
          ? "Something of it is among what this browser cannot read; the notice above says what."
          : "It may have been deleted, or belong to another logbook."}{" "}
        {open !== undefined && (
          <a href={printAddress({ place: "log", ...(open && { sessionId: open.id }) })}>
            {open ? "Go to the open session" : "Back to Log"}
          </a>
        )}
      </p>
    </>
  );
}
