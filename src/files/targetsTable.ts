import type { AllRows, Target, TargetKind } from "#domain";
import { type CsvTable, namesOfCombos } from "./exportRows.ts";

const words: Readonly<Record<TargetKind, string>> = {
  best: "best lap",
  median: "usual lap",
  meanOf: "mean of laps in a row",
  scatter: "scatter",
  cleanShare: "share of clean laps",
};

/** Every target that is not deleted, one a row; figures in seconds, shares in percent. */
export function targetsTable(rows: AllRows): CsvTable {
  const namesOf = namesOfCombos(rows);
  const head = [
    "car",
    "track",
    "layout",
    "figure",
    "laps",
    "wanted",
    "unit",
    "by",
    "set on",
    "at the start",
    "one thing to do",
    "what it is for",
    "note",
    "archived",
  ];
  return [
    head,
    ...rows.targets
      .filter(({ deletedAt }) => deletedAt === undefined)
      .sort((a, b) => a.setAt - b.setAt || (a.id < b.id ? -1 : 1))
      .map((target) => {
        const { car, track, layout } = namesOf(target.comboId);
        const { kind, laps = "", value, by = "", setOn, start, process = "", why = "", note = "" } = target;
        const { archivedAt } = target;
        return [
          car.name,
          track.name,
          layout.name,
          words[kind],
          laps,
          inUnit(kind, value),
          kind === "cleanShare" ? "percent" : "s",
          { figures: by },
          { figures: setOn },
          start === undefined ? "" : inUnit(kind, start),
          process,
          why,
          note,
          archivedAt === undefined ? "" : "yes",
        ];
      }),
  ];
}

function inUnit(kind: Target["kind"], value: number): number {
  return kind === "cleanShare" ? value / 10 : value / 1000;
}
