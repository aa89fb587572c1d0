import { bringBack, sessionsOpen } from "#db";
import type { Id } from "#domain";
import { useDraft, useDraftsFrom, useRows, useUnreadable, useUntil, useWrite } from "#live";
import { printAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { Notice } from "#ui/Notice.tsx";
import { type DraftedLine, everyLine, lineWords } from "../entry/draftedLine.ts";
import { editFrom } from "../entry/useLapDraft.ts";
import styles from "../LogScreen.module.css";

const nothing: DraftedLine = { text: "", lines: [] };

/** The address names a session that this logbook does not have, or cannot read. */
export function NoSession({ sessionId }: { readonly sessionId: Id }) {
  const isDamaged = useUnreadable().length > 0;
  const until = useUntil();
  const open = useRows(async (book) => (await sessionsOpen(book, until))[0] ?? null, [until]);
  return (
    <>
      <h1>This session {isDamaged ? "cannot be shown" : "is not there"}</h1>
      <TypedThere sessionId={sessionId} />
      <p>
        {isDamaged
          ? "Something of it is among what this browser cannot read; the notice above says what."
          : "It may have been deleted, or belong to another logbook."}{" "}
        {open !== undefined && (
          <a href={printAddress({ place: "log", ...(open && { sessionId: open.id }) })}>
            {open ? "Go to the open session" : "Back to Log"}
          </a>
        )}
      </p>
    </>
  );
}

/** What was half typed in a session that was deleted meanwhile: it stays on the page until it is let go. */
function TypedThere({ sessionId }: { readonly sessionId: Id }) {
  const write = useWrite();
  const line = useDraft<DraftedLine>(`entry ${sessionId}`, nothing, lineWords);
  const edits = useDraftsFrom("lap ", [sessionId]);
  const deleted = useRows(
    async ({ tables }) => (await tables.sessions.get(sessionId))?.deletedAt !== undefined,
    [sessionId],
  );
  const mine = everyLine(line.value);
  const texts = [
    ...(mine === "" ? [] : [{ key: "line", text: mine, letGo: () => line.set(undefined) }]),
    ...line.left
      .filter(({ text }) => text !== "")
      .map((left) => ({ key: left.key, text: left.text, letGo: () => line.settleLeft(left) })),
    ...edits.list
      .map((found) => ({ found, ...editFrom(found.state) }))
      .filter((edit) => edit.sessionId === sessionId)
      .map(({ found, text }) => ({ key: found.key, text, letGo: () => void edits.letGo(found) })),
  ];
  if (texts.length === 0) return null;
  const notices = texts.map(({ key, text, letGo }) => (
    <Notice
      key={key}
      tone="caution"
      actions={
        <>
          {deleted === true && (
            <Button
              size="between"
              onClick={() => void write((book) => bringBack(book, { table: "sessions", id: sessionId }))}
            >
              Bring the session back
            </Button>
          )}
          <Button size="between" onClick={letGo}>
            Let it go
          </Button>
        </>
      }
    >
      <p role="alert">
        Half typed in this session, and kept:{" "}
        <strong>
          <Name>{text}</Name>
        </strong>
      </p>
    </Notice>
  ));
  return <div className={styles["typed"]}>{notices}</div>;
}
