import { type CalendarDate, sayDate } from "#domain";
import { Notice } from "./Notice.tsx";

interface AheadSessionsProps {
  readonly sessions: readonly { readonly id: string; readonly date: CalendarDate; readonly href: string }[];
  readonly today: CalendarDate;
}

/** The first few are enough to put right; the rest then moves up. */
const mostNamed = 5;

/** How many sessions the figures leave out because they are dated after tomorrow, each with its link. Nothing where there are none. */
export function AheadSessions({ sessions, today }: AheadSessionsProps) {
  if (sessions.length === 0) return null;
  const isOne = sessions.length === 1;
  return (
    <Notice>
      <p>
        {isOne
          ? "1 session dated after tomorrow is left out:"
          : `${sessions.length} sessions dated after tomorrow are left out:`}{" "}
        {sessions.slice(0, mostNamed).map(({ id, date, href }, index) => (
          <span key={id}>
            {index > 0 && ", "}
            <a href={href}>{sayDate(date)}</a>
          </span>
        ))}
        {sessions.length > mostNamed && " and more"}.{" "}
        {isOne ? "Is its date right?" : "Are their dates right?"} Today is {sayDate(today)} by this device’s
        clock.
      </p>
    </Notice>
  );
}
