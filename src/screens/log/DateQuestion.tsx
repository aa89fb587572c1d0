import { lazy, Suspense, useState } from "react";
import { askDate, isAfterTomorrow } from "#domain";
import { useToday } from "#live";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";
import type { SessionData } from "./useSession.ts";

const DateDialog = lazy(() => import("./DateDialog.tsx").then((file) => ({ default: file.DateDialog })));

/** Asks about a session dated after tomorrow, with the way to change the date at hand. */
export function DateQuestion({ data }: { readonly data: SessionData }) {
  const today = useToday(data.preferences);
  const [isChanging, setChanging] = useState(false);
  const { date } = data.session;
  const isAsked = isAfterTomorrow(date, today);
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
          <p>{askDate("session", date)} No figure counts it before that day.</p>
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
