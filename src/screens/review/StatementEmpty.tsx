import { type CalendarDate, sayDate } from "#domain";
import { type Address, printAddress } from "#state/address.ts";

interface StatementEmptyProps {
  /** Days of the nearest sessions on either side. */
  readonly before: CalendarDate | undefined;
  readonly after: CalendarDate | undefined;
  readonly addressOf: (date: CalendarDate) => Address;
}

/** A week without a session, and where the nearest ones are. */
export function StatementEmpty({ before, after, addressOf }: StatementEmptyProps) {
  if (before === undefined && after === undefined)
    return (
      <p>
        Nothing was driven yet: a week can be summed up once it has a session.{" "}
        <a href={printAddress({ place: "log" })}>Start one in Log</a>
      </p>
    );
  return (
    <div>
      <h2>Nothing was driven in this week</h2>
      {before !== undefined && (
        <p>
          The last session before it was on{" "}
          <a href={printAddress(addressOf(before))}>{sayDate(before)}, in its week</a>.
        </p>
      )}
      {after !== undefined && (
        <p>
          The next one after it was on{" "}
          <a href={printAddress(addressOf(after))}>{sayDate(after)}, in its week</a>.
        </p>
      )}
    </div>
  );
}
