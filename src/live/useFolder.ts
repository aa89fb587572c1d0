import { type BackupFolder, setBackupFolder } from "#db";
import { askToWrite, chooseFolder } from "#files";
import { useNotices } from "#state/notices.ts";
import { useLogbook } from "./logbookContext.ts";
import { useBackupFolder } from "./useBackupFolder.ts";
import { useErrand } from "./useErrand.ts";
import { useShelfWrite } from "./useShelfWrite.ts";

const tagLength = 4;

/** The folder of automatic backup, and what can be done about it; each begins with a click, as browsers demand. */
export interface Folder {
  /** Null where none was chosen, undefined until it is known. */
  readonly folder: BackupFolder | null | undefined;
  readonly isBusy: boolean;
  /** Asks for a folder and backs up into it. */
  readonly choose: () => Promise<void>;
  /** Asks for leave to write again, and backs up. */
  readonly allow: () => Promise<void>;
  readonly backUp: () => Promise<unknown>;
}

/** Automatic backup of the open logbook; what fails is said. */
export function useFolder(): Folder {
  const { book, shelf } = useLogbook();
  const folder = useBackupFolder();
  const { progress, send } = useErrand();
  const shelfWrite = useShelfWrite();
  const say = useNotices((notices) => notices.say);
  const backUp = () => send("afterSession", null);
  const refused = (error: unknown) => {
    const why = error instanceof Error ? error.name : String(error);
    say({
      kind: "fault",
      text: `The browser gave no leave to write there (${why}). Choose another folder.`,
      actions: [],
    });
  };

  const choose = async () => {
    try {
      const handle = await chooseFolder();
      if (handle === undefined) return;
      const tag = folder?.tag ?? shelf.newId().slice(-tagLength);
      const row = { logbook: book.name, handle, tag, seen: folder?.seen ?? {} };
      if (await shelfWrite(() => setBackupFolder(shelf, row))) await backUp();
    } catch (error) {
      refused(error);
    }
  };
  const allow = async () => {
    if (!folder) return;
    try {
      if (!(await askToWrite(folder.handle))) return;
      const { stopped: _, ...going } = folder;
      if (await shelfWrite(() => setBackupFolder(shelf, going))) await backUp();
    } catch (error) {
      refused(error);
    }
  };
  return { folder, isBusy: progress !== undefined, choose, allow, backUp };
}
