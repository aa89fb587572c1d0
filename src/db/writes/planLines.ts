import { holdsAnything, isUntouched } from "#combo";
import { type Id, lineToCome, type PlannedRun, type Run } from "#domain";
import { LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { liveRunsOf } from "./rowsOf.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

/**
 * Takes a plan along in a session that has begun without one. The run that is open and holds nothing yet drives its first line.
 */
export function takePlan(
  book: Logbook,
  { sessionId, lines }: { readonly sessionId: Id; readonly lines: readonly PlannedRun[] },
): Promise<Change> {
  return write(book, "Plan not taken", async (writer) => {
    const { plan = [] } = await writer.get("sessions", sessionId);
    if (plan.length > 0)
      throw new LedgerFault("invalid", "Nothing was changed: the session has a plan already.");
    await writer.patch("sessions", sessionId, { plan: lines });
    const runs = await liveRunsOf(writer, sessionId);
    const last = runs.at(-1);
    if (last !== undefined && isUntouched(last) && last.line === undefined)
      await drive(writer, last, lineToCome(lines, runs));
    return changeOf(writer, "Plan taken along");
  });
}

/**
 * Leaves a line of a session's plan out, or takes it in again. The run that is open and holds nothing yet goes on to the line that
 * comes next.
 */
export function leaveOutLine(
  book: Logbook,
  {
    sessionId,
    lineId,
    isLeftOut = true,
  }: { readonly sessionId: Id; readonly lineId: Id; readonly isLeftOut?: boolean },
): Promise<Change> {
  return write(book, "Plan not changed", async (writer) => {
    const { plan = [] } = await writer.get("sessions", sessionId);
    const lines = plan.map((line): PlannedRun => {
      if (line.id !== lineId) return line;
      return isLeftOut ? { ...line, skipped: true } : takenIn(line);
    });
    await writer.patch("sessions", sessionId, { plan: lines });
    const runs = await liveRunsOf(writer, sessionId);
    const last = runs.at(-1);
    if (last !== undefined && isUntouched(last) && (last.line === lineId || last.line === undefined)) {
      const others = runs.filter((run) => run !== last);
      await drive(writer, last, lineToCome(lines, others));
    }
    return changeOf(writer, isLeftOut ? "Line of the plan left out" : "Line of the plan taken in again");
  });
}

/**
 * Lets a run drive another line of its session's plan; without one it drives none. A line that was left out is taken in again by
 * it. A run that holds nothing yet takes the line's kind and effort; what is in one stays what it was driven as.
 */
export function driveLine(
  book: Logbook,
  { runId, lineId }: { readonly runId: Id; readonly lineId: Id | undefined },
): Promise<Change> {
  return write(book, "Run not changed", async (writer) => {
    const run = await writer.get("runs", runId);
    const { plan = [] } = await writer.get("sessions", run.sessionId);
    const line = plan.find(({ id }) => id !== undefined && id === lineId);
    if (line === undefined && lineId !== undefined)
      throw new LedgerFault("missing", "Nothing was changed: that line is no longer in the plan.");
    if (line?.skipped === true)
      await writer.patch("sessions", run.sessionId, {
        plan: plan.map((one) => (one === line ? takenIn(one) : one)),
      });
    const isKept = holdsAnything(run);
    if (isKept) await writer.patch("runs", run.id, { line: line?.id });
    else await drive(writer, run, line);
    const said = line === undefined ? "Run without a line of the plan" : `Run drives “${line.purpose}”`;
    const isOdd = isKept && line !== undefined && isDrill(line) !== isDrill(run);
    return changeOf(writer, isOdd ? `${said}, and stays a ${sayRunOf(run)}` : said);
  });
}

/** A line that is no longer left out. */
function takenIn({ skipped: _, ...line }: PlannedRun): PlannedRun {
  return line;
}

async function drive(writer: Writer, run: Run, line: PlannedRun | undefined): Promise<void> {
  const { id, kind = "pace", effort = "full" } = line ?? {};
  await writer.patch("runs", run.id, { line: id, kind, effort });
}

const isDrill = ({ kind }: Pick<PlannedRun, "kind">) => kind === "drill";

const sayRunOf = ({ kind }: Run) => (kind === "drill" ? "drill" : `${kind} run`);
