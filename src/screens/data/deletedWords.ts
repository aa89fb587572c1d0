import type { DeletedRow, NamesOfDeleted } from "#db";
import { type Id, type Lap, lapsInOrder, type Run, sayDate } from "#domain";
import { counted, sayLapTime, sayTarget } from "#words";

/** A deleted thing in the driver's words: "Session, Wed 14 Oct 2026" and where it belongs. */
export interface DeletedWords {
  readonly what: string;
  readonly of: string;
}

/** A deleted row in words. */
export function sayDeletedRow(deleted: DeletedRow, names: NamesOfDeleted): DeletedWords {
  const of = (comboId: Id) => names.combos.get(comboId) ?? "";
  switch (deleted.table) {
    case "sessions":
      return { what: `Session, ${sayDate(deleted.row.date)}`, of: of(deleted.row.comboId) };
    case "runs":
      return { what: `Run ${sayRun(deleted.row, names)}`, of: ofSession(deleted.row, names) };
    case "cars":
      return { what: "Car", of: deleted.row.name };
    case "tracks":
      return { what: "Track", of: deleted.row.name };
    case "layouts":
      return { what: "Layout", of: deleted.row.name };
    case "combos":
      return { what: "Combo", of: of(deleted.row.id) };
    case "pages":
      return { what: `New page, ${deleted.row.reason}`, of: of(deleted.row.comboId) };
    case "references":
      return {
        what: `Reference lap ${sayLapTime(deleted.row.ms, deleted.row.decimals)}`,
        of: of(deleted.row.comboId),
      };
    case "targets":
      return { what: `Target: ${sayTarget(deleted.row)}`, of: of(deleted.row.comboId) };
    case "forecasts":
      return { what: `Forecast, ${sayDate(deleted.row.madeOn)}`, of: of(deleted.row.comboId) };
    case "rigs":
      return { what: `Record of the rig, ${sayDate(deleted.row.from)}`, of: deleted.row.name };
    case "rigTests":
      return { what: `Rig test: ${deleted.row.question}`, of: of(deleted.row.comboId) };
    case "cornerReviews":
      return { what: `Corner review, ${sayDate(deleted.row.on)}`, of: of(deleted.row.comboId) };
    case "plans":
      return {
        what: deleted.row.name === undefined ? "Plan" : `Plan “${deleted.row.name}”`,
        of: deleted.row.comboId === undefined ? "" : of(deleted.row.comboId),
      };
    case "preferences":
      return { what: "Preferences", of: "" };
  }
}

/** A deleted lap in words: "Lap 1:23.456 of run 2". */
export function sayDeletedLap(lap: Lap, run: Run, names: NamesOfDeleted): DeletedWords {
  const time = lap.ms === undefined ? "without a time" : sayLapTime(lap.ms, lap.decimals ?? 3);
  return { what: `Lap ${time}, run ${names.numberOf(run)}`, of: ofSession(run, names) };
}

/** "2, 8 laps" */
export function sayRun(run: Run, { numberOf }: Pick<NamesOfDeleted, "numberOf">): string {
  return `${numberOf(run)}, ${counted(run.summary?.laps ?? lapsInOrder(run).length, "lap")}`;
}

/** "Wed 14 Oct 2026, Varnholt Ring · club hatch" */
export function ofSession(run: Run, { combos, sessions }: NamesOfDeleted): string {
  const session = sessions.get(run.sessionId);
  const combo = combos.get(run.comboId) ?? "";
  return session === undefined ? combo : `${sayDate(session.date)}, ${combo}`;
}
