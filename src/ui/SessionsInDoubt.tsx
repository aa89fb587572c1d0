import { type CalendarDate, type DateDoubt, sayDate } from "#domain";
import { Notice } from "./Notice.tsx";

interface SessionsInDoubtProps {
  readonly sessions: readonly {
    readonly id: string;
    readonly date: CalendarDate;
    readonly doubt: DateDoubt | undefined;
    readonly href: string;
  }[];
  readonly today: CalendarDate;
}

/** The first few are enough to put right; the rest then moves up. */
const mostNamed = 5;

/** How many sessions the figures leave out because their date is in doubt, each with its link. Nothing where there are none. */
export function SessionsInDoubt({ sessions, today }: SessionsInDoubtProps) {
  if (sessions.length === 0) return null;
  const isOne = sessions.length === 1;
  const areAhead = sessions.every(({ doubt }) => doubt === "ahead");
  const which = areAhead
    ? "dated after tomorrow"
    : isOne
      ? "whose date is in doubt"
      : "whose dates are in doubt";
  return (
    <Notice>
      <p>
        {isOne ? `1 session ${which} is left out:` : `${sessions.length} sessions ${which} are left out:`}{" "}
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
