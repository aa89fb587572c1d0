import { useState } from "react";
import { stopTest } from "#db";
import { type RigTestPage, useWrite } from "#live";
import { printAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Notice } from "#ui/Notice.tsx";
import {
  driveOnLog,
  type SaidSides,
  sayBegunAnew,
  sayStopEarly,
  sayTestRunToCome,
  sayWhereToDrive,
  toldWhenOver,
} from "#words";
import { OtherInForce } from "./OtherInForce.tsx";
import { PairMarks } from "./PairMarks.tsx";
import styles from "./Test.module.css";

interface RunningTestProps {
  readonly page: RigTestPage;
  readonly sides: SaidSides;
  /** Of the combo. */
  readonly name: string;
}

/** A test that lasts: which pairs are driven, what comes next, and the way to stop. Nothing of how the settings compare. */
export function RunningTest({ page: { test, report, openId }, sides, name }: RunningTestProps) {
  const write = useWrite();
  const [isStopping, setStopping] = useState(false);
  const { progress } = report;
  const anew = sayBegunAnew(progress);
  return (
    <>
      <OtherInForce test={test} sides={sides} />
      <PairMarks progress={progress} />
      <p className={styles["large"]}>Next: {sayTestRunToCome(progress, sides)}</p>
      <div>
        <a
          className={styles["go"]}
          href={printAddress({ place: "log", ...(openId !== null && { sessionId: openId }) })}
        >
          Drive it on Log
        </a>
        <p className={styles["line"]}>
          {openId === null ? sayWhereToDrive(name) : driveOnLog} {anew}
        </p>
      </div>
      <p className={styles["soft"]}>
        Which setting is better: {toldWhenOver.toLowerCase()} Looking earlier would find differences that are
        none.
      </p>
      {isStopping ? (
        <Notice
          isLong
          actions={
            <ButtonRow
              others={
                <Button size="between" onClick={() => setStopping(false)}>
                  Go on with the test
                </Button>
              }
              main={
                <Button
                  size="between"
                  variant="caution"
                  onClick={() => void write((book) => stopTest(book, test.id), { isFinal: true })}
                >
                  Stop it now
                </Button>
              }
            />
          }
        >
          <p role="status">{sayStopEarly(report)}</p>
        </Notice>
      ) : (
        <p>
          <Button size="between" onClick={() => setStopping(true)}>
            Stop the test early
          </Button>
        </p>
      )}
    </>
  );
}
