import { useState } from "react";
import { changeSessionDate } from "#db";
import { instantOf, isKnownZone, readDate } from "#domain";
import { useToday, useWrite } from "#live";
import { Field } from "#ui/Field.tsx";
import type { SessionData } from "./useSession.ts";

const noon = 12;

/** The session's date; where its time of day is known, that stays. */
export function SessionDate({ data }: { readonly data: SessionData }) {
  const { session, preferences } = data;
  const write = useWrite();
  const today = useToday(preferences);
  const [text, setText] = useState<string>(session.date);
  const read = readDate(text);
  const problem = !read.ok
    ? read.problem
    : // Driven where it was tomorrow already, a session keeps its date wherever it is looked at.
      read.date > today && read.date !== session.date
      ? { wrong: `${read.date} has not come yet`, right: `Write a date up to ${today}` }
      : undefined;
  const store = () => {
    if (!read.ok || problem || read.date === session.date) return;
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
    <Field
      label="Date"
      type="date"
      value={text}
      max={today > session.date ? today : session.date}
      onChange={setText}
      onBlur={store}
      problem={problem}
    />
  );
}
