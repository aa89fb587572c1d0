import { type CalendarDate, sayDate } from "#domain";
import type { RigAnswer } from "#live";
import { printAddress } from "#state/address.ts";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { type Column, RuledTable } from "#ui/RuledTable.tsx";
import { sayRigAnswer, sayRigEvidence } from "#words";
import styles from "./Rig.module.css";
import { rigChanges } from "./rigWords.ts";
import type { Placed } from "./timeline.ts";

const columns: readonly Column[] = [
  { key: "from", title: "from" },
  { key: "changed", title: "what changed" },
];

interface RigTimelineProps {
  /** Oldest first. */
  readonly records: readonly Placed[];
  readonly shown?: string | undefined;
  /** What became of the changes, as far as it is known. */
  readonly answers?: readonly RigAnswer[];
  readonly today: CalendarDate;
}

/** All records, the newest first, each with what changed against the one before it. */
export function RigTimeline({ records, shown, answers = [], today }: RigTimelineProps) {
  return (
    <Part title="All records">
      <RuledTable
        caption="Records of the rig, the newest first"
        captionHidden
        columns={columns}
        rows={records.toReversed().map((placed) => ({
          id: placed.rig.id,
          cells: {
            from: (
              <a
                className={styles["date"]}
                href={printAddress({ place: "rig", rigId: placed.rig.id })}
                aria-current={placed.rig.id === shown ? "true" : undefined}
              >
                {sayDate(placed.rig.from)}
              </a>
            ),
            changed: (
              <Changed
                placed={placed}
                answer={answers.find((answer) => answer.rig.id === placed.rig.id)}
                today={today}
              />
            ),
          },
        }))}
      />
    </Part>
  );
}

interface ChangedProps {
  readonly placed: Placed;
  readonly answer: RigAnswer | undefined;
  readonly today: CalendarDate;
}

function Changed({ placed, answer, today }: ChangedProps) {
  const { rig, before, isInForce } = placed;
  const changes = before === undefined ? ["the first record"] : rigChanges(before, rig);
  const when = isInForce ? "in force today" : rig.from > today ? "not yet in force" : undefined;
  return (
    <>
      {rig.name !== "" && (
        <strong className={styles["clamped"]}>
          <Name>{rig.name}</Name>
        </strong>
      )}
      <span className={styles["changes"]}>
        {[when, changes.length === 0 ? "nothing changed" : changes.join(" · ")].filter(Boolean).join(" · ")}
      </span>
      {answer && (
        <span className={styles["became"]}>
          {sayRigAnswer(answer)} ({sayRigEvidence(answer)})
        </span>
      )}
    </>
  );
}
