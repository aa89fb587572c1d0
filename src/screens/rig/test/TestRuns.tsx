import { useState } from "react";
import { voidTestRun } from "#db";
import { longestName, sayDate } from "#domain";
import { type RigTestPage, useWrite } from "#live";
import { printAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { PickReason } from "#ui/PickReason.tsx";
import { type Column, RuledTable } from "#ui/RuledTable.tsx";
import { counted, type SaidSides, saySide, sayWhyAside, voidReasons } from "#words";
import { type ShownRun, shownRuns } from "./shownRuns.ts";
import styles from "./Test.module.css";

interface TestRunsProps {
  readonly page: RigTestPage;
  readonly sides: SaidSides;
}

const columns: readonly Column[] = [
  { key: "run", title: "run" },
  { key: "setting", title: "setting" },
  { key: "laps", title: "clean laps", figures: true },
  { key: "counts", title: "counts" },
];

/** The runs of a test, in the order they were driven: where each was driven, and whether it counts. No times stand here. */
export function TestRuns({ page, sides }: TestRunsProps) {
  const write = useWrite();
  const [asked, setAsked] = useState<ShownRun>();
  const runs = shownRuns(page);
  if (runs.length === 0) return null;
  const { isOver } = page.report;
  const aside = runs.filter(({ why }) => why !== undefined).length;
  const change = (runId: string, reason: string | undefined) => {
    setAsked(undefined);
    void write((book) => voidTestRun(book, { runId, reason }), { isUndoOffered: true });
  };
  return (
    <Disclosure
      title={isOver ? "Which runs counted" : "Its runs so far"}
      answer={`${counted(runs.length, "run")}${aside === 0 ? "" : `, ${aside} left out`}`}
      startOpen={!isOver}
    >
      <div className={styles["column"]}>
        <RuledTable
          caption="Runs of the test"
          captionHidden
          columns={columns}
          rows={runs.map((run) => ({
            id: run.runId,
            soft: run.why !== undefined,
            cells: {
              run: (
                <a className={styles["date"]} href={printAddress({ place: "log", sessionId: run.sessionId })}>
                  {run.date === undefined ? "" : `${sayDate(run.date)}, `}run {run.n}
                </a>
              ),
              setting: `pair ${run.pair}: ${saySide(sides, run.side)}`,
              laps: run.laps,
              counts: (
                <div className={styles["counts"]}>
                  <span>{run.why === undefined ? "yes" : `no: ${sayWhyAside({ why: run.why })}`}</span>
                  {!isOver &&
                    (run.why?.because === "void" ? (
                      <Button
                        variant="quiet"
                        aria-label={`Count run ${run.n} again`}
                        onClick={() => change(run.runId, undefined)}
                      >
                        Count it again
                      </Button>
                    ) : (
                      <Button
                        variant="quiet"
                        aria-label={`Run ${run.n} is void`}
                        onClick={() => setAsked(run)}
                      >
                        Void
                      </Button>
                    ))}
                </div>
              ),
            },
          }))}
        />
        {asked !== undefined && (
          <PickReason
            key={asked.runId}
            question={`Why does run ${asked.n} not count?`}
            reasons={voidReasons}
            deed="Void the run"
            mostSigns={longestName}
            onPick={(reason) => change(asked.runId, reason)}
            onCancel={() => setAsked(undefined)}
          />
        )}
      </div>
    </Disclosure>
  );
}
