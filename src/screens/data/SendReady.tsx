import { useEffect, useRef, useState } from "react";
import { noteSent } from "#db";
import { practiceDay } from "#domain";
import { canPack, canShare, fileName, saveFile, shareFile, writePasteText } from "#files";
import { type PartMade, useLogbook, useShelfWrite } from "#live";
import { useNotices } from "#state/notices.ts";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { TextArea } from "#ui/TextArea.tsx";
import { counted } from "#words";
import { sayBytes } from "./backupWords.ts";
import styles from "./Restore.module.css";

interface SendReadyProps {
  readonly ready: PartMade;
  readonly onDone: () => void;
}

/** What is ready to be sent, and the ways it can go. */
export function SendReady({ ready, onDone }: SendReadyProps) {
  const { book, entry, surroundings } = useLogbook();
  const shelfWrite = useShelfWrite();
  const say = useNotices((notices) => notices.say);
  const [text, setText] = useState<string>();
  const begin = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const [first, ...rest] = begin.current?.querySelectorAll("button") ?? [];
    (canShare(textFile("")) ? rest.at(-1) : first)?.focus();
  }, []);
  const day = practiceDay(surroundings.clock(), surroundings.zone(), 0);
  const named = (extension: string) => fileName(`Lap Ledger ${entry.title} part`, day, extension);
  // Browsers share text files and refuse most others. The text is written when it is wanted: it may be long.
  const pasted = () => writePasteText(ready.bytes);
  const textFile = (content: string) => new File([content], named("txt"), { type: "text/plain" });

  const sent = async (how: string) => {
    const { marks } = ready;
    if (marks !== undefined) await shelfWrite((shelf) => noteSent(shelf, book.name, marks));
    say({ kind: "done", text: `${how} On the other device: Data, “Send and receive”.`, actions: [] });
    onDone();
  };
  const share = async () => {
    try {
      if (await shareFile(textFile(pasted()))) await sent("Handed to the share sheet.");
    } catch (error) {
      const why = `Not shared: the browser refused it (${error instanceof Error ? error.name : String(error)}).`;
      say({ kind: "fault", text: `${why} Save a file or copy the text instead.`, actions: [] });
    }
  };
  const save = () => {
    const name = named(canPack() ? "json.gz" : "json");
    saveFile(name, new Blob([ready.bytes]));
    void sent(`Handed to this browser’s downloads as ${name}.`);
  };
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(pasted());
    } catch {
      // Where the browser gives no leave, or has no clipboard without https, the driver copies it.
      return setText(pasted());
    }
    return sent("Copied as text.");
  };
  return (
    <div className={styles["preview"]}>
      <p>
        Ready: {counted(ready.laps, "lap")} in {counted(ready.sessions, "session")},{" "}
        {sayBytes(ready.bytes.length)}.
      </p>
      <ButtonRow
        ref={begin}
        others={
          <>
            <Button size="between" onClick={save}>
              Save as a file
            </Button>
            <Button size="between" onClick={() => void copy()}>
              Copy as text
            </Button>
          </>
        }
        main={
          canShare(textFile("")) && (
            <Button variant="primary" size="between" onClick={() => void share()}>
              Share
            </Button>
          )
        }
      />
      {text !== undefined && (
        <>
          <TextArea
            label="Text to copy"
            value={text}
            onChange={() => undefined}
            readOnly
            onFocus={(event) => event.currentTarget.select()}
            hint="This browser lets the page copy nothing: select all of it and copy it yourself."
          />
          <p>
            <Button size="between" onClick={() => void sent("Marked as sent.")}>
              I have copied it
            </Button>
          </p>
        </>
      )}
    </div>
  );
}
