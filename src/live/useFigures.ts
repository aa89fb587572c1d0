import { useLiveQuery } from "dexie-react-hooks";
import { useEffect, useRef, useState } from "react";
import type { JobArguments, JobName, JobResult } from "./jobs/jobs.ts";
import { markOf } from "./jobs/markOf.ts";
import { useLogbook } from "./logbookContext.ts";

/** Computed figures, or undefined until they are there for the first time. */
export interface Figures<T> {
  readonly value: T | undefined;
  /** True while newer figures are being worked out; `value` is then the last one known. */
  readonly isRenewing: boolean;
}

interface State<T> {
  readonly about: string;
  readonly mark: unknown;
  readonly value?: T;
  readonly fault?: Error;
}

/** Renewed only after such a rest: laps that are stored one after the other ask once, and the row of a lap comes first. */
const restMs = 50;

/**
 * The figures of one job, computed off the page and asked for again whenever what they rest on has changed. A job
 * that fails is thrown into the nearest boundary.
 * @param isHeld nothing is followed or asked, whatever changes: figures that are there stay as they are
 */
export function useFigures<J extends JobName>(
  job: J,
  details: JobArguments<J>,
  isHeld = false,
): Figures<JobResult<J>> {
  const { book, ask } = useLogbook();
  const about = `${book.name} ${job} ${JSON.stringify(details)}`;
  const [state, setState] = useState<State<JobResult<J>>>();

  // `about` stands for job and details, which are new objects at each drawing. No mark is read while they are held: no stored
  // lap wakes the page for it.
  const mark = useLiveQuery<string | null>(
    () => (isHeld ? null : markOf(book, job, details)),
    [about, isHeld],
  );
  const answered = useRef("");
  useEffect(() => {
    if (mark === undefined || mark === null || isHeld) return;
    let isOvertaken = false;
    const answer = (found: { readonly value: JobResult<J> } | { readonly fault: Error }) => {
      if (isOvertaken) return;
      answered.current = about;
      setState({ about, mark, ...found });
    };
    const askNow = () => {
      ask(book, job, details).then(
        (value) => answer({ value }),
        (fault: Error) => answer({ fault }),
      );
    };
    const clock = setTimeout(askNow, answered.current === about ? restMs : 0);
    return () => {
      isOvertaken = true;
      clearTimeout(clock);
    };
  }, [about, mark, ask, book, isHeld]);

  if (state?.fault && state.about === about && state.mark === mark) throw state.fault;
  return {
    value: state?.about === about ? state.value : undefined,
    isRenewing: !isHeld && (state?.about !== about || state.mark !== mark),
  };
}
