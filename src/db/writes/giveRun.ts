import type { Id, Run, Session } from "#domain";
import { LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import { comboWithNames } from "../reads/combos.ts";
import { runOf, sessionOf } from "../reads/sessions.ts";
import type { Change } from "./change.ts";
import { addCombo } from "./combos.ts";
import { sessionsOf } from "./rowsOf.ts";
import { deleteRun } from "./runs.ts";
import { stampChanged } from "./stamp.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

/** The changes of a run that went from one logbook to another; each is undone in its own logbook. */
export interface GivenRun {
  /** In the logbook it came to: combo, where it was new, and run. */
  readonly there: readonly Change[];
  /** In the logbook it left. */
  readonly here: Change;
}

/**
 * Moves a run, a guest's most likely, to another logbook: to the combo of the same names and its session of the same
 * date, made where missing. The run keeps its id and laps and is nobody's guest there; rig settings, rig tests and plans stay behind. It is
 * stored there before it is deleted here, so a failure between the two leaves it in both, and trying again is safe.
 */
export async function giveRun(from: Logbook, to: Logbook, runId: Id): Promise<GivenRun> {
  const run = await runOf(from, runId);
  const session = run && (await sessionOf(from, run.sessionId));
  const names = run && (await comboWithNames(from, run.comboId));
  if (run === undefined || session === undefined || names === undefined)
    throw new LedgerFault(
      "missing",
      "Run not moved: it is no longer there. It may have been deleted in another tab.",
    );
  const { car, track, layout } = names;
  const combo = await addCombo(to, {
    car: { name: car.name },
    track: { name: track.name },
    layout: { name: layout.name },
    ...(layout.sectors === undefined ? {} : { sectors: layout.sectors }),
  });
  const given = await write(to, "Run not moved", async (writer) => {
    const { id: sessionId } = await sessionOn(writer, combo.comboId, session);
    const { guest: _, rigId: __, rigTest: ___, line: ____, ...fields } = run;
    const given: Run = { ...fields, comboId: combo.comboId, sessionId };
    await writer.put("runs", stampChanged(given, {}, writer.now));
    return changeOf(writer, "Run moved from another logbook");
  });
  return { there: [combo, given], here: await deleteRun(from, { runId }) };
}

async function sessionOn(writer: Writer, comboId: Id, like: Session): Promise<{ readonly id: Id }> {
  const { date, startedAt, zone, isTimeOfDayKnown } = like;
  const known = (await sessionsOf(writer, comboId)).find(
    (session) => session.date === date && session.deletedAt === undefined,
  );
  const fields = { comboId, date, startedAt, zone, isTimeOfDayKnown, endedAt: startedAt, note: "" };
  return known ?? writer.addPart(like, { ...fields, focus: "free" });
}
