import { type ReactNode, Suspense } from "react";
import { lastSession, sessionsOpen } from "#db";
import type { Id } from "#domain";
import { useRows, useUntil } from "#live";
import { useAddress } from "#state/address.ts";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { laterPart } from "#ui/laterPart.ts";
import { useFocusKept } from "./session/useFocusKept.ts";
import { Begin } from "./start/Begin.tsx";
import { Welcome } from "./start/Welcome.tsx";

// Fetched while the logbook opens, which says whether it is wanted.
const sessionPage = import("./session/SessionPage.tsx").then((file) => file.SessionPage);
// What went wrong with it is thrown where it is drawn; in other places nobody waits for it.
sessionPage.catch(() => undefined);
const SessionPage = laterPart(() => sessionPage);
const TypedElsewhere = laterPart(() =>
  import("./typed/TypedElsewhere.tsx").then((file) => file.TypedElsewhere),
);
const TypedNowhere = laterPart(() => import("./typed/TypedNowhere.tsx").then((file) => file.TypedNowhere));

/** Log, and above it what was half typed in another session, or in something that is gone. */
export function LogScreen() {
  const { sessionId, page } = useLogPage();
  return (
    <>
      <FaultBoundary what="What was half typed in other sessions">
        <Suspense fallback={null}>
          <TypedElsewhere sessionId={sessionId} />
          <TypedNowhere sessionId={sessionId} />
        </Suspense>
      </FaultBoundary>
      {page}
    </>
  );
}

/** The session that the address names, else the one that is open, else the way to start one. */
function useLogPage(): { readonly sessionId: Id | undefined; readonly page: ReactNode } {
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
    return {
      sessionId,
      page: (
        <Suspense fallback={<p>Opening the session</p>}>
          <SessionPage key={sessionId} sessionId={sessionId} />
        </Suspense>
      ),
    };
  const page = state === undefined ? <p>Opening Log</p> : state.last ? <Begin /> : <Welcome />;
  return { sessionId, page };
}
