import { useState } from "react";
import { changeSessionDate } from "#db";
import { askDate, instantOf, isDateAsked, isKnownZone, readDate } from "#domain";
import { useNow, useToday, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import { Notice } from "#ui/Notice.tsx";
import type { SessionData } from "./useSession.ts";

const noon = 12;

/** The session's date; where its time of day is known, that stays. One after tomorrow is asked about, never refused. */
export function SessionDate({ data }: { readonly data: SessionData }) {
  const { session, preferences } = data;
  const write = useWrite();
  const today = useToday(preferences);
  const now = useNow();
  const [text, setText] = useState<string>(session.date);
  const read = readDate(text);
  const isAsked = read.ok && read.date !== session.date && isDateAsked(read.date, today, now);
  const store = () => {
    if (!read.ok || read.date === session.date) return;
    const { date } = read;
    const { id: sessionId, isTimeOfDayKnown, zone } = session;
    // The noon of a zone that is not known here stays as far from this clock's noon as it stands.
    const isKept = isTimeOfDayKnown || !isKnownZone(zone);
    const shift = isKept ? session.startedAt - instantOf(session.date, noon, zone) : 0;
    const startedAt = instantOf(date, noon, zone) + shift;
    void write((book) => changeSessionDate(book, { sessionId, date, startedAt, isTimeOfDayKnown }), {
      isUndoOffered: true,
    });
  };
  return (
    <>
      <Field
        label="Date"
        type="date"
        value={text}
        onChange={setText}
        onBlur={() => isAsked || store()}
        problem={read.ok ? undefined : read.problem}
      />
      <div role="status">
        {isAsked && (
          <Notice
            actions={
              <Button size="between" onClick={store}>
                Change it all the same
              </Button>
            }
          >
            <p>{askDate("session", read.date)}</p>
          </Notice>
        )}
      </div>
    </>
  );
}
