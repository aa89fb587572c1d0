import type { CalendarDate } from "#domain";

/** One session of a combo, as the progress chart needs it. Times in ms; absent where there is too little to say. */
export interface ProgressSession {
  readonly id: string;
  readonly date: CalendarDate;
  /** For the order of sessions within a day, epoch ms. */
  readonly startedAt: number;
  readonly median?: number | undefined;
  /** Known decimals of its seconds, of the quartiles' and of the best of ten; absent means all three. */
  readonly medianDecimals?: number | undefined;
  readonly q1?: number | undefined;
  readonly q3?: number | undefined;
  /** Best pace lap. */
  readonly best?: number | undefined;
  readonly bestDecimals?: number | undefined;
  readonly bestOfTen?: number | undefined;
  /** Pace laps behind the figures. */
  readonly laps: number;
  readonly isPresentPage: boolean;
}

/** A personal best of the present page, from its date on. */
export interface BestStep {
  readonly date: CalendarDate;
  readonly ms: number;
  /** Known decimals of its seconds; absent means all three. */
  readonly decimals?: number | undefined;
  /** The session it fell in, so that the step stands at that session's place. */
  readonly sessionId?: string | undefined;
  /** The day it was driven, where the line begins later. */
  readonly since?: CalendarDate | undefined;
}

export interface ProgressTarget {
  readonly ms: number;
  /** "target 1:22.950" */
  readonly label: string;
}

/** A point of the level. */
export interface CurvePoint {
  readonly date: CalendarDate;
  /** The session whose level it is; absent for one to come. */
  readonly sessionId?: string | undefined;
  readonly ms: number;
  /** Lowest and highest of the middle half of sessions. */
  readonly half?: readonly [number, number] | undefined;
  /** The same for nine sessions in ten. */
  readonly nineInTen?: readonly [number, number] | undefined;
}

/** All the progress chart draws. */
export interface ProgressData {
  readonly sessions: readonly ProgressSession[];
  readonly pbSteps: readonly BestStep[];
  readonly targets: readonly ProgressTarget[];
  readonly curve?: readonly CurvePoint[] | undefined;
}
