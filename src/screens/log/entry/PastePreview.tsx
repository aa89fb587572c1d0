import { useMemo } from "react";
import { addLaps } from "#db";
import { betweenSigns, formatLapTime, type Id, type LapSource, signsOf } from "#domain";
import { type Entry, type EntryContext, factsOf, isOdd, type PasteLine, parsePaste, sourceOf } from "#entry";
import { useLogbook, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { sayProblem } from "#ui/FieldFrame.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import styles from "../runs/RunDialog.module.css";
import type { PastePlace } from "./pastePlaces.ts";

interface PastePreviewProps {
  readonly text: string;
  readonly context: EntryContext;
  /** Where the laps can go, the likeliest first. */
  readonly places: readonly PastePlace[];
  readonly onLeave: () => void;
  readonly onDiscard: () => void;
  /** They are in the book. */
  readonly onAdded: (laps: readonly Id[]) => void;
}

interface ReadLine {
  readonly line: PasteLine;
  readonly entry: Entry;
  readonly source: LapSource;
}

/** So many lines are drawn of each kind; the counts are of all. */
const drawn = 150;

/** What each pasted line was read as, and which could not be read, before anything is stored. */
export function PastePreview({ text, context, places, onLeave, onDiscard, onAdded }: PastePreviewProps) {
  const { book } = useLogbook();
  const write = useWrite();
  const { lines } = useMemo(() => parsePaste(text, context), [text, context]);
  const read = lines.flatMap((line) =>
    line.reading.ok ? [{ line, entry: line.reading, source: sourceOf(line.reading) }] : [],
  );
  const unread = lines.filter((line) => !line.reading.ok);
  const asked = read.filter(({ entry }) => entry.asks.length > 0);
  const unasked = read.filter(({ entry }) => entry.asks.length === 0);
  const add = async (some: readonly ReadLine[], runId: Id) => {
    const laps = some.map(({ entry, source }) => ({
      id: book.newId(),
      lap: {
        ...entry.lap,
        source,
        ...(isOdd(entry) && { isOdd: true as const }),
      },
    }));
    if (await write((to) => addLaps(to, { runId, laps }), { isUndoOffered: true }))
      onAdded(laps.map(({ id }) => id));
  };
  const laps = countLaps(read.length);
  return (
    <Dialog
      title={`${laps}${asked.length > 0 ? `, ${asked.length.toLocaleString("en")} to look at` : ""}, ${unread.length.toLocaleString("en")} not read`}
      onClose={onLeave}
      focus={read.length > 0 ? "main" : "actions"}
      actions={
        <ButtonRow
          removes={
            <Button size="between" variant="caution" onClick={onDiscard}>
              Discard the text
            </Button>
          }
          others={
            <>
              <Button size="between" onClick={onLeave}>
                Decide later
              </Button>
              {asked.length > 0 &&
                unasked.length > 0 &&
                places.map(({ runId, words }) => (
                  <Button key={runId} size="between" onClick={() => void add(unasked, runId)}>
                    Add {countLaps(unasked.length)}
                    {words !== undefined && ` to ${words}`}, without those to look at
                  </Button>
                ))}
            </>
          }
          main={
            read.length > 0 &&
            places.map(({ runId, words }) => (
              <Button
                key={runId}
                size="between"
                variant={words === undefined ? "primary" : "plain"}
                onClick={() => void add(read, runId)}
              >
                Add {laps}
                {words !== undefined && ` to ${words}`}
              </Button>
            ))
          }
        />
      }
    >
      <div className={styles["form"]}>
        {unread.length > 0 && (
          <RuledTable
            caption={
              unread.length > drawn ? `Not read: the first ${drawn} lines` : "Not read: these lines stay out"
            }
            columns={[
              { key: "line", title: "line", figures: true },
              { key: "text", title: "text" },
              { key: "why", title: "why" },
            ]}
            rows={unread.slice(0, drawn).map((line) => ({
              id: String(line.lineNumber),
              cells: {
                line: line.lineNumber,
                text: <bdi>{line.text.slice(0, 60)}</bdi>,
                why: line.reading.ok ? "" : sayProblem(line.reading.problem),
              },
            }))}
          />
        )}
        {asked.length > 0 && (
          <RuledTable
            caption={`To look at: ${countLaps(asked.length)}${asked.length > drawn ? `, the first ${drawn}` : ""}`}
            columns={readColumns}
            rows={asked.slice(0, drawn).map((one) => readRow(one, context, factsOf(one.entry)))}
          />
        )}
        {unasked.length > 0 && (
          <RuledTable
            caption={unasked.length > drawn ? `Read: the first ${drawn} laps` : "Read as"}
            columns={readColumns}
            rows={unasked.slice(0, drawn).map((one) => readRow(one, context))}
          />
        )}
      </div>
    </Dialog>
  );
}

const readColumns = [
  { key: "line", title: "line", figures: true },
  { key: "text", title: "text" },
  { key: "time", title: "lap", figures: true, strong: true },
  { key: "about", title: "" },
] as const;

function readRow({ line, entry, source }: ReadLine, { displayDecimals }: EntryContext, why?: string) {
  const { ms, decimals } = entry.lap;
  return {
    id: String(line.lineNumber),
    cells: {
      line: line.lineNumber,
      text: <bdi>{line.text.slice(0, 60)}</bdi>,
      time: ms === undefined ? "no time" : formatLapTime(ms, decimals),
      about: [signsOf({ ...entry.lap, source }, displayDecimals), why].filter(Boolean).join(betweenSigns),
    },
  };
}

function countLaps(count: number): string {
  return `${count.toLocaleString("en")} ${count === 1 ? "lap" : "laps"}`;
}
