import type { CalendarDate, Focus, Lap, Run } from "#domain";
import type { Clock } from "./tableClock.ts";

/** What holds for rows that have no cell for it, or an empty one. */
export interface WholeTable {
  readonly date?: CalendarDate;
  readonly car?: string;
  readonly track?: string;
}

/** The settings of a run that a table may say. */
export type TableSettings = Pick<Run, "kind" | "effort" | "surface" | "note"> &
  Partial<Pick<Run, "tyres" | "fuelLitres" | "setup" | "assists" | "guest">>;

/** What a table may say of a whole session. */
export interface TableAbout {
  readonly focus?: Focus;
  readonly conditions?: string;
  readonly note?: string;
}

/** One lap of a table, as read. */
export interface TableLap {
  readonly line: number;
  readonly date: CalendarDate;
  readonly clock?: Clock;
  /** Where the row names the instant itself, with its distance from UTC. */
  readonly instant?: number;
  readonly zone?: string;
  readonly car: string;
  readonly track: string;
  /** Empty for a track's only layout. */
  readonly layout: string;
  readonly session?: number;
  readonly run?: number;
  readonly place?: number;
  readonly settings: TableSettings;
  readonly about: TableAbout;
  readonly lap: Pick<Lap, "source" | "remarks"> &
    Partial<Pick<Lap, "ms" | "decimals" | "sectors" | "sectorDecimals" | "note" | "isNotBest" | "isOdd">>;
}
