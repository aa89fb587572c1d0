import { useCallback, useEffect, useRef, useState } from "react";
import { lastSession, sessionOf } from "#db";
import { notedOn, sayDate } from "#domain";
import { type PartMade, useErrand, useLogbook, useRows, useSentAt, useUntil } from "#live";
import { goTo, useAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Part } from "#ui/Part.tsx";
import { ReceiveForm } from "./ReceiveForm.tsx";
import styles from "./Restore.module.css";
import { SendReady } from "./SendReady.tsx";

/** From this device to another, and back: one session, or all that is new. Nothing is doubled, however often. */
export function SendPart({ titles }: { readonly titles: readonly string[] }) {
  const { entry, surroundings } = useLogbook();
  const sentAt = useSentAt();
  const address = useAddress();
  const sendId = address.place === "data" ? address.sendId : undefined;
  const until = useUntil();
  const session = useRows(
    async (book) =>
      (await (sendId === undefined ? lastSession(book, until) : sessionOf(book, sendId))) ?? null,
    [sendId, until],
  );
  const { progress, send } = useErrand();
  const [ready, setReady] = useState<PartMade>();
  const first = useRef<HTMLButtonElement>(null);
  const prepare = useCallback(
    async (wanted: Parameters<typeof send<"part">>[1]["wanted"]) => {
      setReady(undefined);
      setReady(await send("part", { wanted, title: entry.title }));
    },
    [send, entry.title],
  );
  const asked = session?.id === sendId ? sendId : undefined;
  useEffect(() => {
    if (asked !== undefined) void prepare({ kind: "session", sessionId: asked });
  }, [asked, prepare]);
  const isBusy = progress !== undefined;
  const { clock, zone } = surroundings;
  const sentOn = sentAt === undefined ? undefined : notedOn(sentAt, clock(), zone());
  return (
    <Part title="Send and receive" ruled>
      <p>
        From the phone to the PC, or back, without a server: share a small file, or copy a text, and take it
        in on the other device. Sent twice, or both ways, nothing is doubled.
      </p>
      <div className={styles["buttons"]}>
        <Button
          ref={first}
          size="between"
          disabled={isBusy || !session}
          onClick={() => session && void prepare({ kind: "session", sessionId: session.id })}
        >
          {session ? `Send the session of ${sayDate(session.date)}` : "Send the last session"}
        </Button>
        <Button size="between" disabled={isBusy} onClick={() => void prepare({ kind: "unsent" })}>
          {sentOn === undefined ? "Send everything" : "Send all since the last sending"}
        </Button>
      </div>
      <div role="status" className={styles["said"]}>
        {isBusy && <p>{progress.step}</p>}
        {sentOn !== undefined && !isBusy && ready === undefined && (
          <p>
            {sentOn === "ahead"
              ? "Sent last while this device’s clock stood ahead."
              : `Sent last: all up to ${sayDate(sentOn)}.`}
          </p>
        )}
      </div>
      {ready && (
        <SendReady
          ready={ready}
          onDone={() => {
            setReady(undefined);
            goTo({ place: "data" }, "replace");
            first.current?.focus();
          }}
        />
      )}
      <ReceiveForm titles={titles} />
    </Part>
  );
}
