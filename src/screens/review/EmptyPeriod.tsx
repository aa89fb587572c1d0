import type { Id } from "#domain";
import { type Period, printAddress } from "#state/address.ts";
import type { ComboReview } from "#stats";
import { sayPeriod } from "./reviewWords.ts";

interface EmptyPeriodProps {
  readonly comboId: Id;
  readonly period: Period;
  readonly review: ComboReview;
}

/** A period without a session, and where there are some. */
export function EmptyPeriod({ comboId, period, review }: EmptyPeriodProps) {
  const { daysSinceLast } = review;
  if (daysSinceLast === undefined)
    return (
      <div>
        <h2>No session with this combo yet</h2>
        <p>
          Its times show here after the first one.{" "}
          <a href={printAddress({ place: "log" })}>Start one in Log</a>
        </p>
      </div>
    );
  return (
    <div>
      <h2>No session in {sayPeriod(period)}</h2>
      <p>
        {daysSinceLast > 0 &&
          `The last one was ${daysSinceLast === 1 ? "a day" : `${daysSinceLast} days`} ago. `}
        <a href={printAddress({ place: "review", comboId, period: { kind: "all" } })}>Show all of them</a>
      </p>
    </div>
  );
}
