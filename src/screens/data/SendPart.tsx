import { useRef, useState } from "react";
import { lastSession } from "#db";
import { practiceDay, sayDate } from "#domain";
import { type PartMade, useErrand, useLogbook, useRows, useShelvedNow } from "#live";
import { Button } from "#ui/Button.tsx";
import { Part } from "#ui/Part.tsx";
import { ReceiveForm } from "./ReceiveForm.tsx";
import styles from "./Restore.module.css";
import { SendReady } from "./SendReady.tsx";

/** Rows are sent again from a day before the last sending on, for clocks that were set back in between. */
const overlapMs = 86_400_000;

/** From this device to another, and back: one session, or all that is new. Nothing is doubled, however often. */
export function SendPart({ titles }: { readonly titles: readonly string[] }) {
  const { entry, surroundings } = useLogbook();
  const { sentUpTo } = useShelvedNow();
  const session = useRows(async (book) => (await lastSession(book)) ?? null, []);
  const { progress, send } = useErrand();
  const [ready, setReady] = useState<PartMade>();
  const first = useRef<HTMLButtonElement>(null);
  const prepare = async (wanted: Parameters<typeof send<"part">>[1]["wanted"]) => {
    setReady(undefined);
    setReady(await send("part", { wanted, title: entry.title }));
  };
  const isBusy = progress !== undefined;
  const sentOn = sentUpTo === undefined ? undefined : practiceDay(sentUpTo, surroundings.zone(), 0);
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
        <Button
          size="between"
          disabled={isBusy}
          onClick={() => void prepare({ kind: "since", stamp: (sentUpTo ?? 0) - overlapMs })}
        >
          {sentOn === undefined ? "Send everything" : "Send all since the last sending"}
        </Button>
      </div>
      <div role="status" className={styles["said"]}>
        {isBusy && <p>{progress.step}</p>}
        {sentOn !== undefined && !isBusy && ready === undefined && (
          <p>Sent last: all up to {sayDate(sentOn)}.</p>
        )}
      </div>
      {ready && (
        <SendReady
          key={ready.upTo}
          ready={ready}
          onDone={() => {
            setReady(undefined);
            first.current?.focus();
          }}
        />
      )}
      <ReceiveForm titles={titles} />
    </Part>
  );
}
