import { runNumber } from "#combo";
import { type AllRows, decimalsOf, formatLapTime, type RigTest, type Run } from "#domain";
import { type CsvTable, type ExportRun, type ExportSession, exportSessions, startOf } from "./exportRows.ts";
import { writeRemarks } from "./tableRemarks.ts";
import type { CsvCell } from "./writeCsv.ts";

const head = [
  "date",
  "time of day",
  "time zone",
  "car",
  "track",
  "layout",
  "session",
  "run",
  "lap",
  "lap time",
  "seconds counted",
  "remarks",
  "note",
  "known by",
  "not best",
  "confirmed as odd",
  "kind",
  "effort",
  "surface",
  "tyres",
  "fuel litres",
  "set-up",
  "assists",
  "guest",
  "guest name",
  "run note",
  "focus",
  "conditions",
  "session note",
  "rig test",
  "test pair",
  "test side",
  "test setting",
  "test void",
] as const;

/**
 * Every lap that is not deleted, one a row, oldest session first. Imported again it gives the same laps. `lap time` has
 * the decimals that are known, and `seconds counted` all that it counts as; "no time" stands where there is none. A guest
 * and the guest's name have cells of their own, for any word can be a name. A run of a rig test was driven with a setting of
 * the test, and says with which; a table that is read again makes no rig test of it.
 */
export function lapsTable(rows: AllRows): CsvTable {
  const sessions = exportSessions(rows);
  const laps = sessions.flatMap(({ runs }) => runs.flatMap((run) => run.laps));
  const sectors = laps.reduce((most, lap) => Math.max(most, lap.sectors?.length ?? 0), 0);
  const sectorHeads = Array.from({ length: sectors }, (_, index) => `sector ${index + 1}`);
  return [
    [...head, ...sectorHeads],
    ...sessions.flatMap((session) =>
      session.runs.flatMap((run) =>
        lapRows(session, run, [numberOf(session, run), sectors], testCells(run.run, rows.rigTests)),
      ),
    ),
  ];
}

const numberOf = ({ runs }: ExportSession, { run }: ExportRun) =>
  runNumber(
    run,
    runs.map((one) => one.run),
  );

/** The rig test that a run is of, its pair, side and setting, and why it is void; five empty cells for any other run. */
function testCells({ rigTest }: Run, tests: readonly RigTest[]): readonly CsvCell[] {
  if (rigTest === undefined) return ["", "", "", "", ""];
  const { id, pair, side, void: why = "" } = rigTest;
  const test = tests.find((one) => one.id === id);
  const setting = (side === "A" ? test?.sayA : test?.sayB) ?? "";
  return [test?.question || "yes", pair, side, setting, why];
}

function lapRows(
  all: ExportSession,
  { run, laps }: ExportRun,
  [number, sectors]: readonly [number: number, sectors: number],
  ofTest: readonly CsvCell[],
): CsvCell[][] {
  const { session, ofTheDay, car, track, layout } = all;
  const { date, clock, zone } = startOf(session);
  const { kind, effort, surface, tyres = "", fuelLitres = "", setup = "", assists = "", guest, note } = run;
  return laps.map((lap, index) => [
    { figures: date },
    { figures: clock },
    zone,
    car.name,
    track.name,
    layout.name,
    ofTheDay,
    number,
    index + 1,
    lap.ms === undefined ? "no time" : { figures: formatLapTime(lap.ms, lap.decimals) },
    lap.ms === undefined ? "" : secondsCell(lap.ms, lap.decimals),
    writeRemarks(lap.remarks),
    lap.note ?? "",
    lap.source,
    lap.isNotBest === true ? "yes" : "",
    lap.isOdd === true ? "yes" : "",
    kind,
    effort,
    surface,
    tyres,
    fuelLitres,
    setup,
    assists,
    guest === undefined ? "" : "yes",
    guest ?? "",
    note,
    session.focus,
    session.conditions ?? "",
    session.note,
    ...ofTest,
    ...Array.from({ length: sectors }, (_, place) =>
      lap.ms === undefined ? "" : sectorCell(lap.sectors?.[place], lap.sectorDecimals?.[place]),
    ),
  ]);
}

/** No digit of it left out, and at least one decimal where it would else be read as milliseconds. */
function secondsCell(ms: number, decimals = 3): CsvCell {
  const fewest = ms < 1_000_000 ? 0 : 1;
  return { figures: (ms / 1000).toFixed(Math.max(fewest, decimals, decimalsOf(ms))) };
}

/**
 * A sector with the decimals it is known to; where they are not said, with no more than it needs, so that its sum is not
 * checked more closely than it was known.
 */
function sectorCell(ms: number | undefined, decimals?: number): CsvCell {
  if (ms === undefined) return "";
  return { figures: formatLapTime(ms, decimals ?? decimalsOf(ms)) };
}
