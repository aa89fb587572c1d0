import { isDrivenRun, type NumberedRun } from "#combo";
import { type Id, type RigSettings, type Run, sayDate } from "#domain";

/** What was driven with something else than before. */
export interface SessionChange {
  /** "Since Thu 26 Nov 2026", "From run 3 on". */
  readonly from: string;
  readonly what: "rig" | "tyres" | "set-up" | "aids";
  /** In the driver's words, or the date of the rig's record. */
  readonly now: string;
  /** The rig's record. */
  readonly rigId: Id | undefined;
}

type NamedRig = Pick<RigSettings, "id" | "name" | "from">;

interface ChangesIn {
  /** The session's own runs with laps, in order. */
  readonly runs: readonly NumberedRun<Run>[];
  /** The combo's session before it with its runs, in order. */
  readonly before: { readonly date: string; readonly runs: readonly Run[] } | undefined;
  readonly rigs: readonly NamedRig[];
}

/**
 * What changed in a session: from run to run, and against the last run of the session before. What is not noted on both
 * sides is no change.
 */
export function sessionChanges({ runs, before, rigs }: ChangesIn): SessionChange[] {
  const own = runs.filter(({ run }) => isOwn(run));
  const last = before?.runs.findLast(isOwn);
  return own.flatMap(({ run, number }, index) => {
    const earlier = index === 0 ? last : own[index - 1]?.run;
    if (earlier === undefined) return [];
    const from = index === 0 ? `Since ${sayDate(before?.date ?? "")}` : `From run ${number} on`;
    return facts(rigs).flatMap(({ what, of, say }): SessionChange[] => {
      const [then, now] = [of(earlier), of(run)];
      if (then === undefined || now === undefined || then === now) return [];
      return [{ from, what, now: say(now), rigId: what === "rig" ? now : undefined }];
    });
  });
}

const isOwn = (run: Run) => run.guest === undefined && isDrivenRun(run);
const noted = (words: string | undefined) => words?.trim() || undefined;
const asItIs = (words: string) => words;

const facts = (rigs: readonly NamedRig[]) =>
  [
    {
      what: "rig",
      of: ({ rigId }: Run) => rigId,
      say: (id: string) => nameOfRig(rigs.find((rig) => rig.id === id)),
    },
    { what: "tyres", of: ({ tyres }: Run) => noted(tyres), say: asItIs },
    { what: "set-up", of: ({ setup }: Run) => noted(setup), say: asItIs },
    { what: "aids", of: ({ assists }: Run) => noted(assists), say: asItIs },
  ] as const;

function nameOfRig(rig: NamedRig | undefined): string {
  if (rig === undefined) return "a record that is gone";
  return rig.name === "" ? `settings from ${sayDate(rig.from)}` : rig.name;
}
