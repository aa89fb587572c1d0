/** What the entry line knows of the combo and the session, and what it makes of the typed text. */
import type { Reading, Remark } from "#domain";
import type { TimeForm } from "./word.ts";

/** Times known besides those of the session's own laps and the PB, ms. None is of a lap that was confirmed as odd. */
export interface Known {
  /** Of the page's last runs of the same surface and kind, sorted. */
  readonly page?: readonly number[];
  /** Of other laps of the session and the page's last runs, sorted. */
  readonly here?: readonly number[];
  /** Usual laps of the layout's other combos. */
  readonly layout?: readonly number[];
  /** Length of the layout, metres. */
  readonly lengthMetres?: number | undefined;
  /** Usual laps of the driver's other combos. */
  readonly elsewhere?: readonly number[];
}

/** All that is known when a line is typed. */
export interface EntryContext {
  /** The usual lap that short forms are completed from: `usualLap` says which. */
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
  /** Times of this session's laps that say what is usual in the run, in any order: its pace laps, or those like the run's. */
  readonly paceTimes: readonly number[];
  /** Times of the run's clean laps, in the order driven. */
  readonly runTimes?: readonly number[] | undefined;
  /** Of the session's clean laps in runs of its surface and kind, in any order. Where not said, the pace times. */
  readonly likeTimes?: readonly number[] | undefined;
  readonly known?: Known | undefined;
  /** Whether the PB says what is usual in the run: a dry pace or race run, at pace. Taken as true when not said. */
  readonly isPbUsual?: boolean | undefined;
  /** Usual lap of other kinds of runs on the same surface, where there are some. */
  readonly surfaceMs?: number | undefined;
  /** Whether the run is dry: only then the PB says what is usual in it. Taken as true when not said. */
  readonly isDry?: boolean | undefined;
  /** Set for laps that are slow by their nature, like the first of a race. */
  readonly isSlow?: boolean | undefined;
  /** Set in a run of a plan's drill, whose tries are counted beside its laps. */
  readonly isCounted?: boolean | undefined;
  /** Whether a clean lap would count for the PB. */
  readonly isPractice: boolean;
  /** Whether a clean lap would be a pace lap if it were dry. Taken as true when not said. */
  readonly isPaceRun?: boolean | undefined;
}

/** A lap as typed; without `ms` it has no time. */
export interface TypedLap {
  readonly ms?: number;
  /** Stands whenever `ms` does, 0 to 3. */
  readonly decimals?: number;
  readonly sectors?: readonly number[];
  /** How many decimals each sector was typed with; absent where that is not known. */
  readonly sectorDecimals?: readonly number[];
  readonly remarks: readonly Remark[];
  readonly note?: string;
  /** The ledger said so of the row it was copied from. */
  readonly isNotBest?: true;
}

/** How the lap was written: a form of one time, sectors alone, or remarks without a time. */
export type EntryForm = TimeForm | "sectors" | "no time";

/** A reason to want a second Enter. */
export interface Ask {
  readonly why:
    | "far under PB"
    | "short form PB"
    | "far over usual"
    | "far from usual"
    | "minute left out"
    | "sectors found"
    | "unit or spin"
    | "out or off";
  /** What is the matter, as it stands alone. */
  readonly fact: string;
  /** The same where what can be done follows; absent where it is no other. */
  readonly before?: string;
  /** What a second Enter would say; absent where that is only that it is right. */
  readonly again?: string;
  /** What can be done instead, from its comma on. */
  readonly instead?: string;
  /** Confirmed, the lap is an odd one: no short form and no later lap is measured by it. */
  readonly isOdd?: true;
}

/** A line as read. */
export interface Entry {
  readonly lap: TypedLap;
  readonly form: EntryForm;
  readonly asks: readonly Ask[];
  /** What the ledger said of the row it was copied from. */
  readonly isFromMemory?: boolean;
}

/** What a line was read as, or what is wrong with it. */
export type EntryReading = Reading<Entry>;
