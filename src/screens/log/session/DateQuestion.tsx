import { Suspense, useState } from "react";
import { askDate, dateDoubt, isClockWrong, sayDate } from "#domain";
import { useNow, useToday } from "#live";
import { Button } from "#ui/Button.tsx";
import { laterPart } from "#ui/laterPart.ts";
import { Notice } from "#ui/Notice.tsx";
import type { SessionData } from "./useSession.ts";

const DateDialog = laterPart(() => import("./DateDialog.tsx").then((file) => file.DateDialog));

/**
 * Asks about a session whose date is in doubt, with the way to change it at hand. While the clock is known to be wrong, it
 * is no measure of what lies ahead of it.
 */
export function DateQuestion({ data }: { readonly data: SessionData }) {
  const today = useToday(data.preferences);
  const now = useNow();
  const [isChanging, setChanging] = useState(false);
  const { date } = data.session;
  const doubt = dateDoubt(data.session, today);
  const isAsked = doubt === "early" || (doubt === "ahead" && !isClockWrong(now));
  if (!isAsked && !isChanging) return null;
  return (
    <>
      {isAsked && (
        <Notice
          actions={
            <Button size="between" onClick={() => setChanging(true)}>
              Change date
            </Button>
          }
        >
          <p>
            {doubt === "early"
              ? `This session is dated ${sayDate(date)} by a clock that stood wrong: Lap Ledger was not made then. No figure counts it until its date is changed.`
              : `${askDate("session", date)} No figure counts it before that day.`}
          </p>
        </Notice>
      )}
      {isChanging && (
        <Suspense fallback={null}>
          <DateDialog data={data} onClose={() => setChanging(false)} />
        </Suspense>
      )}
    </>
  );
}
