import type { Id } from "#domain";
import { hourReached, lapsOfRun, runTimes } from "#stats";
import { sayBestOfRun, sayBreakDue, saySoFar, sayVerdict, sayVerdictFigures, type WhatNext } from "#words";
import type { SessionFigures } from "../session/sessionFigures.ts";
import type { SessionData } from "../session/useSession.ts";
import { BigView } from "./BigView.tsx";
import { shapeOf } from "./shapeOf.ts";
import { useVerdict } from "./useVerdict.ts";
import { Verdict } from "./Verdict.tsx";

interface VerdictAreaProps {
  readonly data: SessionData;
  readonly figures: SessionFigures;
  readonly next: WhatNext | undefined;
  /** No lap of the run to come is there yet. */
  readonly isBetween: boolean;
  /** The run is one of a rig test that lasts: no figure of its speed is told. */
  readonly isSilent: boolean;
  /** Present while the big view is open. */
  readonly big: { readonly isAwake: boolean; readonly onBack: () => void } | undefined;
  readonly onOpenLap: (lapId: Id) => void;
}

/** The verdict of the run that has just ended, above the ledger and in the big view. */
export function VerdictArea({ data, figures, next, isBetween, isSilent, big, onOpenLap }: VerdictAreaProps) {
  const { said } = figures;
  const verdict = useVerdict(data, said, isBetween);
  const isTold = said !== undefined && !isSilent;
  const hours = isBetween && said ? hourReached([...said.runsBefore, said.run]) : undefined;
  const breakDue = hours === undefined ? undefined : sayBreakDue(hours);
  return (
    <>
      {isBetween && said && next && (
        <Verdict
          said={said}
          verdict={verdict}
          figures={isTold ? sayVerdictFigures(said.report, verdict) : []}
          next={next}
          breakDue={breakDue}
          onOpenLap={onOpenLap}
        />
      )}
      {big && (
        <BigView
          said={said}
          words={bigWords()}
          verdict={verdict}
          shape={said && (isBetween ? verdict && shapeOf(verdict) : "too few")}
          figures={isTold ? sayVerdictFigures(said.report) : []}
          best={isBetween && said ? sayBestOfRun(said.report, said.isBeaten) : undefined}
          next={
            said === undefined
              ? (next?.suggestion ?? "Type the first laps after your run.")
              : isBetween
                ? next?.suggestion
                : undefined
          }
          breakDue={breakDue}
          {...big}
        />
      )}
    </>
  );

  /** While a run goes on its word could change with the next lap, so its laps are only counted. */
  function bigWords() {
    if (said === undefined) return noLaps;
    if (isBetween) return verdict && sayVerdict(verdict);
    return saySoFar(lapsOfRun(said.run, runTimes(said.run, data.preferences)));
  }
}

const noLaps = { word: "no laps", figure: "yet", about: "", sentence: "" } as const;
