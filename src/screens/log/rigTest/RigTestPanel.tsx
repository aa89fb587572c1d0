import { useState } from "react";
import { beginTestRun, voidTestRun } from "#db";
import { type Id, lapsInOrder, longestName, type Run } from "#domain";
import { useWrite } from "#live";
import { printAddress } from "#state/address.ts";
import { lapsOfTestRun, type TestPlace } from "#stats";
import { Button } from "#ui/Button.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { PickReason } from "#ui/PickReason.tsx";
import {
  sayBegunAnew,
  sayDoesNotCount,
  sayNextTestRun,
  sayTestAfter,
  sayTestRun,
  sayTestRunInShort,
  voidReasons,
} from "#words";
import styles from "./RigTestPanel.module.css";
import type { TestTonight } from "./useTestTonight.ts";

interface RigTestPanelProps {
  readonly sessionId: Id;
  readonly tonight: TestTonight;
  /** The pad stands open under it: one line is all there is room for. */
  readonly isSmall: boolean;
  /** No lap of a run to come is there yet. */
  readonly isBetween: boolean;
  /** Ends the run and begins the next one, as at the foot of the ledger. */
  readonly onEndRun: () => void;
  readonly onPutOff: () => void;
}

/** The rig test above the entry line: which setting comes next and whether it is on, and how far its run is. */
export function RigTestPanel(props: RigTestPanelProps) {
  const { tonight, isBetween } = props;
  const { run, progress } = tonight;
  const [voided, setVoided] = useState<Run>();
  return (
    <section
      aria-label="Rig test"
      className={styles["panel"]}
      data-small={props.isSmall ? (run === undefined && isBetween ? "next" : "run") : undefined}
    >
      {run !== undefined ? (
        <OfRun {...props} run={run} onVoid={setVoided} />
      ) : progress.next === undefined ? (
        <Over tonight={tonight} />
      ) : (
        <Waiting {...props} next={progress.next} onVoid={setVoided} />
      )}
      {voided !== undefined && <VoidDialog run={voided} onClose={() => setVoided(undefined)} />}
    </section>
  );
}

interface Voiding {
  readonly onVoid: (run: Run) => void;
}

interface ToComeProps extends RigTestPanelProps, Voiding {
  readonly next: TestPlace;
}

/** A run of practice that is being driven is ended first; between two runs the next one can begin. */
function Waiting(props: ToComeProps) {
  if (props.isBetween) return <ToCome {...props} />;
  return <p className={styles["second"]}>{sayTestAfter(props.next, props.tonight.progress)}</p>;
}

/** The run to come: its setting is put on first, and said to be. */
function ToCome({ sessionId, tonight, next, onPutOff, onVoid }: ToComeProps) {
  const write = useWrite();
  const { test, sides, progress, last } = tonight;
  const begin = () =>
    void write((book) =>
      beginTestRun(book, { sessionId, testId: test.id, pair: next.pair, side: next.side }),
    );
  const anew = sayBegunAnew(progress);
  return (
    <>
      <p className={styles["words"]}>
        {sayNextTestRun(progress, sides)}
        {anew !== "" && <span className={styles["second"]}> {anew}</span>}
      </p>
      <div className={styles["buttons"]}>
        <Button
          size="between"
          variant="primary"
          aria-label={`It is on: begin the run with ${next.side}`}
          onClick={begin}
        >
          It is on: begin
        </Button>
        {last !== undefined && (
          <Button size="between" variant="quiet" onClick={() => onVoid(last)}>
            Last run is void
          </Button>
        )}
        <span className={styles["apart"]}>
          <Button size="between" variant="quiet" onClick={onPutOff}>
            Not tonight
          </Button>
        </span>
      </div>
    </>
  );
}

interface OfRunProps extends RigTestPanelProps, Voiding {
  readonly run: Run;
}

/** The run that is being driven: how many of its laps are there, and its end once they are. */
function OfRun({ tonight, isSmall, run, onEndRun, onVoid }: OfRunProps) {
  const { test, sides, why } = tonight;
  const laps = lapsInOrder(run).length;
  const planned = lapsOfTestRun(test);
  const side = run.rigTest?.side ?? "A";
  return (
    <>
      <p className={styles["words"]}>
        {why === undefined
          ? (isSmall ? sayTestRunInShort : sayTestRun)(side, sides, laps, planned)
          : sayDoesNotCount(why)}
      </p>
      <div className={styles["buttons"]}>
        {laps >= planned && (
          <Button size="between" variant="primary" onClick={onEndRun}>
            End run
          </Button>
        )}
        <Button size="between" variant="quiet" aria-label="This run is void" onClick={() => onVoid(run)}>
          Void
        </Button>
      </div>
    </>
  );
}

/** Every pair is driven: what it found stands on the test's own page. */
function Over({ tonight: { test, progress, sides, last } }: Pick<RigTestPanelProps, "tonight">) {
  return (
    <p className={styles["words"]}>
      {sayNextTestRun(progress, sides)}{" "}
      {last !== undefined && (
        <a className={styles["link"]} href={printAddress({ place: "rig", testId: test.id })}>
          What it found
        </a>
      )}
    </p>
  );
}

function VoidDialog({ run, onClose }: { readonly run: Run; readonly onClose: () => void }) {
  const write = useWrite();
  return (
    <Dialog title="A void run" onClose={onClose}>
      <PickReason
        question="Why does this run not count?"
        reasons={voidReasons}
        deed="Void the run"
        mostSigns={longestName}
        onPick={(reason) => {
          onClose();
          void write((book) => voidTestRun(book, { runId: run.id, reason }), { isUndoOffered: true });
          // The setting that is asked for again stands at the top, as after any run.
          window.scrollTo(0, 0);
        }}
        onCancel={onClose}
      />
    </Dialog>
  );
}
