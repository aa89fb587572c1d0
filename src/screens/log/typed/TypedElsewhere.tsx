import { comboWithNames } from "#db";
import { comboName, type Id, sayDate } from "#domain";
import { useDraftsFrom, useRows } from "#live";
import { goTo } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { Notice } from "#ui/Notice.tsx";
import { type DraftedLine, everyLine } from "../entry/draftedLine.ts";
import { editFrom } from "../entry/useLapDraft.ts";
import styles from "../LogScreen.module.css";

/**
 * What was half typed in a session that is not on the page, because it was ended or deleted, perhaps in another tab. In
 * one that is still open the text waits in its field.
 * @param sessionId the session on the page, if one is
 */
export function TypedElsewhere({ sessionId }: { readonly sessionId: Id | undefined }) {
  const lines = useDraftsFrom("entry ", [sessionId]);
  const edits = useDraftsFrom("lap ", [sessionId]);
  const all = [
    ...lines.list.map((found) => ({
      found,
      of: found.of,
      text: everyLine(found.state as DraftedLine),
      letGo: () => void lines.letGo(found),
    })),
    ...edits.list.map((found) => {
      const { sessionId: of, text } = editFrom(found.state);
      return { found, of, text, letGo: () => void edits.letGo(found) };
    }),
  ].filter(({ of, text }) => of !== undefined && of !== sessionId && text !== "");
  const ids = [...new Set(all.flatMap(({ of }) => of ?? []))].sort();
  const about = ids.join(" ");
  const names = useRows(
    async (book) => {
      const sessions = await book.tables.sessions.bulkGet(ids);
      const combos = await Promise.all(
        sessions.map(async (session) => session && comboWithNames(book, session.comboId)),
      );
      const of = new Map(
        sessions.flatMap((session, index) => {
          const combo = combos[index];
          if (session === undefined) return [];
          const name = combo === undefined ? "" : `, ${comboName(combo)}`;
          const state =
            session.deletedAt !== undefined ? "deleted" : session.endedAt !== undefined ? "ended" : "open";
          return [[session.id, { name: `${sayDate(session.date)}${name}`, state }] as const];
        }),
      );
      return { about, of };
    },
    [about],
  );
  // Names of what was listed before say nothing of what is listed now.
  if (names?.about !== about) return null;
  const notices = all.map(({ found, of = "", text, letGo }) => {
    const session = names.of.get(of);
    if (session?.state === "open") return null;
    return (
      <Notice
        key={found.key}
        tone="caution"
        actions={
          <>
            <Button size="between" onClick={() => goTo({ place: "log", sessionId: of })}>
              Go to it
            </Button>
            <Button size="between" onClick={letGo}>
              Let it go
            </Button>
          </>
        }
      >
        <p role="status">
          Half typed in{" "}
          {session === undefined ? "a session that is gone" : <Name>{`the session of ${session.name}`}</Name>}
          {session?.state === "deleted" && ", which has been deleted"}
          {session?.state === "ended" && ", which has ended"}:{" "}
          <strong>
            <Name>{text}</Name>
          </strong>
        </p>
      </Notice>
    );
  });
  return notices.some((notice) => notice !== null) && <div className={styles["typed"]}>{notices}</div>;
}
