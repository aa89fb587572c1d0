import { runNumber } from "#combo";
import {
  type AllRows,
  type CalendarDate,
  comboName,
  type Id,
  type Run,
  type Stamped,
  type TableName,
} from "#domain";

/** Where a row stands, for its words: what of it is known. */
export interface Place {
  readonly date?: CalendarDate;
  /** "Varnholt Ring · club hatch" */
  readonly combo?: string;
  /** What the run is called by in its session. */
  readonly run?: number;
  /** Number of the lap in its run. */
  readonly lap?: number;
}

/** Fields of a row by which it stands somewhere. */
interface Standing {
  readonly comboId?: Id;
  readonly sessionId?: Id;
  readonly on?: CalendarDate;
  readonly date?: CalendarDate;
}

/** Says where a row or lap stands, from the rows it hangs on. */
export function places(rows: AllRows): (table: TableName | "laps", id: Id) => Place {
  const sessions = byId(rows.sessions);
  const names = comboNames(rows);
  const of = (row: Standing | undefined): Place => {
    const session = row?.sessionId === undefined ? undefined : sessions.get(row.sessionId);
    const combo = names(row?.comboId);
    const date = session?.date ?? row?.date ?? row?.on;
    return { ...(date !== undefined && { date }), ...(combo !== undefined && { combo }) };
  };
  const runs = byId(rows.runs);
  const runOfLap = new Map<Id, Id>();
  for (const run of rows.runs) for (const lap of run.laps) runOfLap.set(lap.id, run.id);
  const runsOf = new Map<Id, Run[]>();
  for (const run of rows.runs)
    if (run.deletedAt === undefined) runsOf.set(run.sessionId, [...(runsOf.get(run.sessionId) ?? []), run]);
  const other = new Map<TableName, Map<Id, Stamped>>();

  return (table, id) => {
    if (table === "combos") return of({ comboId: id });
    if (table === "laps" || table === "runs") {
      const run = runs.get(table === "laps" ? (runOfLap.get(id) ?? "") : id);
      const lap = run && table === "laps" ? run.laps.findIndex((one) => one.id === id) + 1 : 0;
      return {
        ...of(run),
        ...(run && { run: runNumber(run, runsOf.get(run.sessionId) ?? []) }),
        ...(lap > 0 && { lap }),
      };
    }
    const known = other.get(table) ?? byId<Stamped>(rows[table]);
    other.set(table, known);
    return of(known.get(id) as Standing | undefined);
  };
}

const byId = <R extends Stamped>(rows: readonly R[]) => new Map(rows.map((row) => [row.id, row]));

function comboNames({ combos, cars, layouts, tracks }: AllRows): (id: Id | undefined) => string | undefined {
  const [comboOf, carOf, layoutOf, trackOf] = [byId(combos), byId(cars), byId(layouts), byId(tracks)];
  return (id) => {
    const combo = id === undefined ? undefined : comboOf.get(id);
    const [car, layout] = [combo && carOf.get(combo.carId), combo && layoutOf.get(combo.layoutId)];
    const track = layout && trackOf.get(layout.trackId);
    return car && layout && track && comboName({ car, layout, track });
  };
}
