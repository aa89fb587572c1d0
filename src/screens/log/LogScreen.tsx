import { lastSession, sessionsOpen } from "#db";
import { useRows } from "#live";
import { useAddress } from "#state/address.ts";
import { Begin } from "./Begin.tsx";
import { SessionPage } from "./SessionPage.tsx";
import { Welcome } from "./Welcome.tsx";

/** Log: the session that the address names, else the one that is open, else the way to start one. */
export function LogScreen() {
  const address = useAddress();
  const named = address.place === "log" ? address.sessionId : undefined;
  const state = useRows(async (book) => {
    const [open, last] = await Promise.all([sessionsOpen(book), lastSession(book)]);
    return { open, last };
  }, []);
  if (named !== undefined) return <SessionPage key={named} sessionId={named} />;
  if (state === undefined) return <p>Opening Log</p>;
  const [open] = state.open;
  if (open) return <SessionPage key={open.id} sessionId={open.id} />;
  return state.last ? <Begin /> : <Welcome />;
}
