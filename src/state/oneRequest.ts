import type { Kept } from "./storage.ts";

/** What the driver may be asked for between two sessions. */
export type Request = "allow" | "look" | "backup" | "keep" | "install";

/** What a request rests on. */
export interface Needs {
  /** A session has just ended; false where the page was opened with none going on. */
  readonly hasEnded: boolean;
  /** The folder of automatic backup: none, written to, or no longer. */
  readonly folder: "none" | "going" | "stopped";
  /** Another device has left a file in it that has not been looked at. */
  readonly hasNews: boolean;
  readonly isBackupDue: boolean;
  readonly kept: Kept;
  /** The browser has been asked to keep the data, whatever it said. */
  readonly wasAskedToKeep: boolean;
  /** The browser clears what a site stored, but not what an app on the home screen did. */
  readonly canInstall: boolean;
  readonly wasAskedToInstall: boolean;
}

/**
 * The one request that is made, the most needed first: leave to write to the folder again, a look at what another device
 * left, a backup, the browser's promise to keep the data, the home screen. The last two only after a deed, at the end of a
 * session, once, and only where nothing backs the logbook up by itself. None of them where nothing is needed.
 */
export function oneRequest(needs: Needs): Request | undefined {
  if (needs.folder === "stopped") return "allow";
  if (needs.folder === "going") return needs.hasNews ? "look" : undefined;
  if (needs.isBackupDue) return "backup";
  if (!needs.hasEnded || needs.kept === "kept") return undefined;
  if (!needs.wasAskedToKeep && needs.kept === "not kept") return "keep";
  return needs.canInstall && !needs.wasAskedToInstall ? "install" : undefined;
}
