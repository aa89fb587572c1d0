import { lazy, Suspense } from "react";
import { lastSession, sessionsOpen } from "#db";
import { useRows, useUntil } from "#live";
import { useAddress } from "#state/address.ts";
import { Begin } from "./Begin.tsx";
import { useFocusKept } from "./useFocusKept.ts";
import { Welcome } from "./Welcome.tsx";

// Fetched while the logbook opens, so that an open session is there at once; the start form does not wait for it.
const sessionPage = import("./SessionPage.tsx").then((file) => ({ default: file.SessionPage }));
const SessionPage = lazy(() => sessionPage);

/** Log: the session that the address names, else the one that is open, else the way to start one. */
export function LogScreen() {
  const address = useAddress();
  const named = address.place === "log" ? address.sessionId : undefined;
  const until = useUntil();
  const state = useRows(
    async (book) => {
      const [open, last] = await Promise.all([sessionsOpen(book, until), lastSession(book, until)]);
      return { open, last };
    },
    [until],
  );
  const sessionId = named ?? state?.open[0]?.id;
  useFocusKept(sessionId ?? (state && "none"));
  if (sessionId !== undefined)
    return (
      <Suspense fallback={<p>Opening the session</p>}>
        <SessionPage key={sessionId} sessionId={sessionId} />
      </Suspense>
    );
  if (state === undefined) return <p>Opening Log</p>;
  return state.last ? <Begin /> : <Welcome />;
}
