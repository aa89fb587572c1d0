import { useEffect, useRef, useState } from "react";
import { practiceDay, sayDate } from "#domain";
import { useIncoming, useLogbook } from "#live";
import { Choice } from "#ui/Choice.tsx";
import { Name } from "#ui/Name.tsx";
import { MergeWay } from "./MergeWay.tsx";
import { NewWay } from "./NewWay.tsx";
import { ReplaceWay } from "./ReplaceWay.tsx";
import styles from "./Restore.module.css";
import type { SeenFile } from "./useLook.ts";

export type Way = "new" | "merge" | "replace";

const ways: readonly { readonly value: Way; readonly label: string }[] = [
  { value: "new", label: "a new logbook" },
  { value: "merge", label: "merge" },
  { value: "replace", label: "replace" },
];

const hints: Readonly<Record<Way, string>> = {
  new: "It becomes a logbook of its own, beside those you have.",
  merge: "Its rows go into the open logbook; where both have a row, the one changed last stays.",
  replace: "It takes the place of the open logbook, which is kept for thirty days of use.",
};

interface IncomingPreviewProps {
  readonly file: SeenFile;
  readonly titles: readonly string[];
  readonly first: Way;
  readonly onLeave: () => void;
}

/** What a backup holds, before any of it is stored, and the ways it can go from here. */
export function IncomingPreview({ file, titles, first, onLeave }: IncomingPreviewProps) {
  const { name, preview } = file;
  const { surroundings, entry } = useLogbook();
  const incoming = useIncoming();
  const [way, setWay] = useState<Way>(first);
  const top = useRef<HTMLParagraphElement>(null);
  useEffect(() => top.current?.focus(), []);
  const isBusy = incoming.progress !== undefined;
  const madeOn = preview.madeAt > 0 && sayDate(practiceDay(preview.madeAt, surroundings.zone(), 0));
  const shared = { file, incoming, onLeave };
  return (
    <div className={styles["preview"]}>
      <p ref={top} tabIndex={-1}>
        <Name>{name}</Name>: a backup of <Name>{preview.title}</Name>
        {madeOn !== false && `, last changed ${madeOn}`}.{" "}
        {preview.isVerified
          ? "It is whole: its numbers of rows and its checksum fit."
          : "Its numbers of rows fit; its checksum could not be compared here."}
      </p>
      <Choice
        label="What to do with it"
        value={way}
        options={isBusy ? ways.map((one) => ({ ...one, disabled: true })) : ways}
        onChange={setWay}
        size="between"
        hint={
          <>
            {hints[way]}{" "}
            {way !== "new" && (
              <>
                Open now: <Name>{entry.title}</Name>.
              </>
            )}
          </>
        }
      />
      {way === "new" && <NewWay {...shared} titles={titles} />}
      {way === "merge" && <MergeWay {...shared} madeOn={madeOn === false ? undefined : madeOn} />}
      {way === "replace" && <ReplaceWay {...shared} />}
    </div>
  );
}
