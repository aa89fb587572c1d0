import { useCallback, useEffect, useState } from "react";
import { type Draft, draftAbout, forgetDraft, takeOverDraft } from "#db";
import { sayMoment } from "#domain";
import { findDraftsFrom } from "./findDrafts.ts";
import { useLogbook } from "./logbookContext.ts";
import { sayTypedFault } from "./sayTypedFault.ts";
import { whenSeen } from "./whenSeen.ts";

/** Something half typed, in this tab or in one that is gone. */
export interface FoundDraft {
  readonly key: string;
  /** What follows the beginning asked for: the id of a lap. */
  readonly of: string;
  readonly state: unknown;
  readonly text: string;
  /** "Tuesday 24 November, 21:40" */
  readonly when: string | undefined;
  readonly isMine: boolean;
  readonly row: Draft;
}

export interface DraftsFrom {
  readonly list: readonly FoundDraft[];
  /** Makes what a tab that is gone left the draft of this tab. */
  readonly takeOver: (found: FoundDraft) => Promise<void>;
  readonly letGo: (found: FoundDraft) => Promise<void>;
  readonly lookAgain: () => void;
}

/**
 * What is half typed about several things of one kind: edits of laps. Looked at again when the driver comes to the page.
 * @param beginning what their keys begin with within this logbook: "lap "
 * @param about looked at again when one of these changes
 */
export function useDraftsFrom(beginning: string, about: readonly unknown[]): DraftsFrom {
  const { shelf, book, surroundings } = useLogbook();
  const { tab } = surroundings;
  const from = `${book.name}/${beginning}`;
  const [list, setList] = useState<readonly FoundDraft[]>([]);
  const [looks, setLooks] = useState(0);
  const lookAgain = useCallback(() => setLooks((count) => count + 1), []);
  useEffect(() => whenSeen(lookAgain), [lookAgain]);

  useEffect(() => {
    let isOver = false;
    const zone = surroundings.zone();
    findDraftsFrom(shelf, tab, from).then(
      (found) =>
        isOver ||
        setList(
          found.map(({ row, isMine }) => ({
            key: row.key,
            of: draftAbout(row.key).slice(from.length),
            state: row.state,
            text: row.text,
            when: row.at === undefined ? undefined : sayMoment(row.at, zone),
            isMine,
            row,
          })),
        ),
      // Where nothing can be read any more, the page says so by itself.
      () => undefined,
    );
    return () => {
      isOver = true;
    };
  }, [shelf, tab, from, surroundings, looks, ...about]);

  const told = (work: Promise<unknown>) => work.then(lookAgain, sayTypedFault);
  return {
    list,
    takeOver: (found) => told(tab.id.then((id) => takeOverDraft(shelf, found.row, id))),
    letGo: (found) => told(forgetDraft(shelf, found.key)),
    lookAgain,
  };
}
