import type { CalendarDate, Corner, Id } from "#domain";
import type { RigAnswer } from "#live";
import { goTo } from "#state/address.ts";
import type { ComboReview } from "#stats";
import type { KnownOn } from "#words";
import type { Days } from "./periods.ts";

/** What every question of the review is answered from. */
export interface Looked {
  readonly comboId: Id;
  readonly comboName: string;
  /** Corners of its layout. */
  readonly corners: readonly Corner[];
  readonly review: ComboReview;
  /** What became of this combo at the changes of the rig, the newest first. */
  readonly rig: readonly RigAnswer[];
  readonly days: Days;
  readonly today: CalendarDate;
  /** As of which day its findings are told. */
  readonly on: KnownOn;
  /** The equally long period before, in words; absent where the period has no beginning. */
  readonly before: string | undefined;
  /** Whether level, forecast and targets are drawn beside what was driven, and the way to have them. */
  readonly isAhead: boolean;
  readonly onAhead: (isAhead: boolean) => void;
  /** Leads to the list of sessions, and so to the laps. */
  readonly onSessions: () => void;
}

/** Where a session's laps stand. */
export function openSession(sessionId: Id): void {
  goTo({ place: "log", sessionId });
}
