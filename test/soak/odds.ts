/** Everything the driver does. */
export type Deed =
  | "lap added"
  | "lap edited"
  | "lap edited, undone"
  | "lap deleted"
  | "lap deleted, undone"
  | "lap added, undone"
  | "run ended"
  | "lap in both tabs at once"
  | "tab reloaded"
  | "tab killed"
  | "tab killed at Enter"
  | "tab killed half-typed"
  | "both tabs killed half-typed"
  | "network lost or back"
  | "session ended, another begun"
  | "backup restored"
  | "clock jumped"
  | "questions answered";

/** How often each deed is done beside the others. */
export type Odds = Readonly<Record<Deed, number>>;

/** An evening with a bit of everything. */
export const anything: Odds = {
  "lap added": 60,
  "lap edited": 8,
  "lap edited, undone": 4,
  "lap deleted": 5,
  "lap deleted, undone": 4,
  "lap added, undone": 4,
  "run ended": 2,
  "lap in both tabs at once": 4,
  "tab reloaded": 3,
  "tab killed": 1,
  "tab killed at Enter": 1,
  "tab killed half-typed": 0.5,
  "both tabs killed half-typed": 0.25,
  "network lost or back": 1.5,
  "session ended, another begun": 0.4,
  "backup restored": 0.25,
  "clock jumped": 1.5,
  "questions answered": 4,
};

/** A browser that gives up at every turn, under a driver who types laps. */
export const killed: Odds = {
  ...anything,
  "lap added": 40,
  "lap deleted, undone": 1,
  "tab killed": 8,
  "tab killed at Enter": 24,
  "tab killed half-typed": 12,
  "both tabs killed half-typed": 6,
  "backup restored": 0,
  "clock jumped": 0,
  "questions answered": 0,
};
