import { type Id, lineToCome, type PlannedRun, type Run, type Session } from "#domain";
import { runsOf } from "./rowsOf.ts";
import type { Fields } from "./stamp.ts";
import type { Writer } from "./writer.ts";

/** What a driver may say of a new run; the rest is carried over from the run before. */
export type RunSettings = Partial<Omit<Fields<Run>, "sessionId" | "comboId" | "n" | "laps" | "line">> & {
  /** The line of the plan it drives, undefined for none; not named, the one that comes next. */
  readonly line?: Id | undefined;
};

/** Kind and effort are chosen for each run, and a guest goes with his: ten laps at pace in no figure are the price else. */
const carried = ["surface", "rigId", "tyres", "fuelLitres", "setup", "assists"] as const;

/** The settings a run takes over from the one before it; kind and effort are pace and full again. */
function settingsOf(run: Run): Omit<RunSettings, "line"> {
  return Object.fromEntries(
    carried.filter((field) => run[field] !== undefined).map((field) => [field, run[field]]),
  );
}

/** A run that drives a line of the plan is of its kind and effort. */
function lineSettings(line: PlannedRun | undefined): Partial<Pick<Run, "line" | "kind" | "effort">> {
  if (line?.id === undefined) return {};
  const { id, kind, effort } = line;
  return { line: id, ...(kind && { kind }), ...(effort && { effort }) };
}

/**
 * Adds a run at the end of a session, with the settings of an earlier run, those of the line of the plan that comes next, and
 * then those given. Its start is now
 * while the session is open, else the start of the session's last run.
 */
export async function addRunAfter(
  writer: Writer,
  session: Session,
  before: Run | undefined,
  settings: RunSettings = {},
  id?: Id,
): Promise<Run> {
  const runs = await runsOf(writer, session.id);
  const { line, ...given } = settings;
  const driven =
    "line" in settings ? session.plan?.find(({ id }) => id === line) : lineToCome(session.plan, runs);
  const last = runs.at(-1);
  return writer.add(
    "runs",
    {
      startedAt: session.endedAt === undefined ? writer.now : (last?.startedAt ?? session.startedAt),
      kind: "pace",
      effort: "full",
      surface: "dry",
      note: "",
      ...(before ? settingsOf(before) : {}),
      ...lineSettings(driven),
      ...given,
      sessionId: session.id,
      comboId: session.comboId,
      n: (last?.n ?? 0) + 1,
      laps: [],
    },
    id,
  );
}

/** Ends every open run of a session. */
export async function endRuns(writer: Writer, sessionId: Id, at: number): Promise<void> {
  for (const run of await runsOf(writer, sessionId))
    if (run.endedAt === undefined && run.deletedAt === undefined)
      await writer.patch("runs", run.id, { endedAt: Math.max(at, run.startedAt) });
}
