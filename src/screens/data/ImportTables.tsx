import { formatLapTime, layoutName, remarkInWords, sayCountedAs, sayDate } from "#domain";
import type { ReadLaps, TableLap } from "#files";
import { sayProblem } from "#ui/FieldFrame.tsx";
import { Name } from "#ui/Name.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import { sayGuest } from "#words";

const lapsDrawn = 8;
const unreadDrawn = 50;
const oddDrawn = 50;

interface ImportTablesProps {
  readonly read: ReadLaps;
  /** Laps far from the usual, with what is odd about them. */
  readonly odd: ReadonlyMap<TableLap, string> | undefined;
}

/** Laps to look at, the first laps as they were read, and the rows that were not, each with its reason. */
export function ImportTables({ read, odd = new Map() }: ImportTablesProps) {
  const { laps, unread } = read;
  const drawn = laps.slice(0, lapsDrawn);
  return (
    <>
      {odd.size > 0 && (
        <RuledTable
          caption={
            odd.size > oddDrawn
              ? `Far from what is usual: the first ${oddDrawn} laps`
              : "Far from what is usual: look at these"
          }
          columns={[
            { key: "line", title: "line", figures: true },
            { key: "why", title: "why" },
            { key: "date", title: "date", unbroken: true },
            { key: "combo", title: "track and car" },
          ]}
          rows={[...odd].slice(0, oddDrawn).map(([row, why]) => ({
            id: String(row.line),
            cells: {
              line: row.line,
              why,
              date: `${sayDate(row.date)}${clockOf(row)}`,
              combo: <Name>{`${layoutName({ name: row.track }, { name: row.layout })} · ${row.car}`}</Name>,
            },
          }))}
        />
      )}
      {laps.length > 0 && (
        <RuledTable
          caption={laps.length > lapsDrawn ? `Read: the first ${lapsDrawn} laps` : "Read as"}
          columns={[
            { key: "line", title: "line", figures: true },
            { key: "time", title: "lap", figures: true, strong: true },
            { key: "date", title: "date", unbroken: true },
            { key: "combo", title: "track and car" },
            ...(drawn.some((row) => moreOf(row) !== "") ? [{ key: "more", title: "more" }] : []),
          ]}
          rows={drawn.map((row) => ({
            id: String(row.line),
            cells: {
              line: row.line,
              time: row.lap.ms === undefined ? "no time" : formatLapTime(row.lap.ms, row.lap.decimals),
              date: `${sayDate(row.date)}${clockOf(row)}`,
              combo: <Name>{`${layoutName({ name: row.track }, { name: row.layout })} · ${row.car}`}</Name>,
              more: <Name>{moreOf(row)}</Name>,
            },
          }))}
        />
      )}
      {unread.length > 0 && (
        <RuledTable
          caption={
            unread.length > unreadDrawn
              ? `Not read: the first ${unreadDrawn} rows`
              : "Not read: these rows stay out"
          }
          columns={[
            { key: "line", title: "line", figures: true },
            { key: "why", title: "why" },
            { key: "text", title: "row" },
          ]}
          rows={unread.slice(0, unreadDrawn).map((row) => ({
            id: String(row.line),
            cells: { line: row.line, why: sayProblem(row), text: <Name>{row.text.slice(0, 80)}</Name> },
          }))}
        />
      )}
    </>
  );
}

function clockOf({ clock }: TableLap): string {
  if (clock === undefined) return "";
  return `, ${[clock.hour, clock.minute].map((part) => String(part).padStart(2, "0")).join(":")}`;
}

function moreOf({ run, lap, settings }: TableLap): string {
  const sectors = lap.sectors?.map((ms) => formatLapTime(ms)).join(" + ");
  const parts = [
    run === undefined ? undefined : `run ${run}`,
    settings.guest === undefined ? undefined : sayGuest(settings.guest),
    sayCountedAs(lap),
    settings.kind === "pace" ? undefined : settings.kind,
    settings.surface === "dry" ? undefined : settings.surface,
    settings.tyres,
    sectors,
    ...lap.remarks.map(remarkInWords),
    lap.note,
  ];
  return parts.filter((part) => part !== undefined && part !== "").join(" · ");
}
