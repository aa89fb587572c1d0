import { useMemo } from "react";
import { addLaps } from "#db";
import { formatLapTime, type Id, remarkInWords } from "#domain";
import { type EntryContext, parsePaste, sourceOf } from "#entry";
import { useLogbook, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { sayProblem } from "#ui/FieldFrame.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import type { PastePlace } from "./pastePlaces.ts";
import styles from "./RunDialog.module.css";

interface PastePreviewProps {
  readonly text: string;
  readonly context: EntryContext;
  /** Where the laps can go, the likeliest first. */
  readonly places: readonly PastePlace[];
  readonly onLeave: () => void;
  readonly onDiscard: () => void;
}

/** So many lines are drawn of each kind; the counts are of all. */
const drawn = 150;

/** What each pasted line was read as, and which could not be read, before anything is stored. */
export function PastePreview({ text, context, places, onLeave, onDiscard }: PastePreviewProps) {
  const { book } = useLogbook();
  const write = useWrite();
  const { lines } = useMemo(() => parsePaste(text, context), [text, context]);
  const read = lines.flatMap((line) => (line.reading.ok ? [{ line, entry: line.reading }] : []));
  const unread = lines.filter((line) => !line.reading.ok);
  const add = async (runId: Id) => {
    const laps = read.map(({ entry }) => ({
      id: book.newId(),
      lap: { ...entry.lap, source: sourceOf(entry, context.displayDecimals) },
    }));
    if (await write((to) => addLaps(to, { runId, laps }), { isUndoOffered: true })) onDiscard();
  };
  const laps = `${read.length.toLocaleString("en")} ${read.length === 1 ? "lap" : "laps"}`;
  return (
    <Dialog
      title={`${laps}, ${unread.length.toLocaleString("en")} not read`}
      onClose={onLeave}
      focus="actions"
      actions={
        <>
          {read.length > 0 &&
            places.map(({ runId, words }) => (
              <Button
                key={runId}
                size="between"
                variant={words === undefined ? "primary" : "plain"}
                onClick={() => void add(runId)}
              >
                Add {laps}
                {words !== undefined && ` to ${words}`}
              </Button>
            ))}
          <Button size="between" onClick={onLeave}>
            Decide later
          </Button>
          <Button size="between" variant="caution" onClick={onDiscard}>
            Discard the text
          </Button>
        </>
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
        {read.length > 0 && (
          <RuledTable
            caption={read.length > drawn ? `Read: the first ${drawn} laps` : "Read as"}
            columns={[
              { key: "line", title: "line", figures: true },
              { key: "text", title: "text" },
              { key: "time", title: "lap", figures: true, strong: true },
              { key: "about", title: "" },
            ]}
            rows={read.slice(0, drawn).map(({ line, entry }) => ({
              id: String(line.lineNumber),
              cells: {
                line: line.lineNumber,
                text: <bdi>{line.text.slice(0, 60)}</bdi>,
                time:
                  entry.lap.ms === undefined ? "no time" : formatLapTime(entry.lap.ms, entry.lap.decimals),
                about: [...entry.lap.remarks.map(remarkInWords), entry.asks[0]?.sentence]
                  .filter(Boolean)
                  .join(" · "),
              },
            }))}
          />
        )}
      </div>
    </Dialog>
  );
}
