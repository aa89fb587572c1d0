import { Fragment } from "react";
import { sayDate } from "#domain";
import type { RigTestPage } from "#live";
import { printAddress } from "#state/address.ts";

interface SessionDatesProps {
  /** In their order. */
  readonly sessions: RigTestPage["sessions"];
  /** Of each link. */
  readonly className: string | undefined;
}

/** The days of some sessions as words of a sentence, each leading to its session. */
export function SessionDates({ sessions, className }: SessionDatesProps) {
  return sessions.map(({ id, date }, index) => (
    <Fragment key={id}>
      {index > 0 && (index === sessions.length - 1 ? " and " : ", ")}
      <a className={className} href={printAddress({ place: "log", sessionId: id })}>
        {sayDate(date)}
      </a>
    </Fragment>
  ));
}
