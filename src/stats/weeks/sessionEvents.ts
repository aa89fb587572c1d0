/**
 * Something dated that moves a driver's level: a step that stays (a change of settings), or a break of ten days or
 * more, whose loss halves every 20 laps after it.
 */
export interface SessionEvent {
  readonly kind: "step" | "break";
  /** Number of sessions before it; as many as there are means that it acts on the coming ones. */
  readonly afterSession: number;
}
