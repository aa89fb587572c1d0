/** What the entry line knows of the combo and the session, and what it makes of the typed text. */
import type { Reading, Remark } from "#domain";
import type { TimeForm } from "./word.ts";

/** All that is known when a line is typed. */
export interface EntryContext {
  /** Median of this session's pace laps, else the page's PB. */
  readonly usualMs?: number | undefined;
  /** The lap before, where it has a time. */
  readonly previousMs?: number | undefined;
  readonly previousDecimals?: number | undefined;
  /** What a signed entry is measured from. */
  readonly relativeTo: "lap" | "pb" | "target";
  readonly pbMs?: number | undefined;
  readonly pbDecimals?: number | undefined;
  readonly targetMs?: number | undefined;
  /** Decimals the simulator shows, for digits without a point. */
  readonly displayDecimals: 1 | 2 | 3;
  /** Number of the layout's sectors and corners, where known. */
  readonly sectors?: number | undefined;
  readonly corners?: number | undefined;
  /** Times of this session's pace laps, in any order. */
  readonly paceTimes: readonly number[];
  /** Whether a clean lap would count for the PB. */
  readonly isPractice: boolean;
  /** Whether a clean lap would be a pace lap; while pasting it then moves the usual. Taken as true when not said. */
  readonly isPaceRun?: boolean | undefined;
}

/** A lap as typed; without `ms` it has no time. */
export interface TypedLap {
  readonly ms?: number;
  /** Stands whenever `ms` does, 0 to 3. */
  readonly decimals?: number;
  readonly sectors?: readonly number[];
  readonly remarks: readonly Remark[];
  readonly note?: string;
}

/** How the lap was written: a form of one time, sectors alone, or remarks without a time. */
export type EntryForm = TimeForm | "sectors" | "no time";

/** A reason to want a second Enter. */
export interface Ask {
  readonly why:
    | "far under PB"
    | "short form PB"
    | "far over usual"
    | "minute left out"
    | "sectors found"
    | "unit or spin";
  readonly sentence: string;
}

/** A line as read. */
export interface Entry {
  readonly lap: TypedLap;
  readonly form: EntryForm;
  readonly asks: readonly Ask[];
}

/** What a line was read as, or what is wrong with it. */
export type EntryReading = Reading<Entry>;
