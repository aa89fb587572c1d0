import type { BackupFolder } from "#db";
import type { CalendarDate } from "#domain";
import { mayWrite, newestOfOthers } from "#files";

/** The names of the newest files of other devices, or why the folder cannot be used. */
export async function newsIn(
  { handle, tag }: BackupFolder,
  today: CalendarDate,
): Promise<readonly string[] | string> {
  if (!(await mayWrite(handle))) return "the browser asks again for leave to write into the folder";
  try {
    return (await newestOfOthers(handle, tag, today)).map(({ name }) => name);
  } catch (error) {
    if (error instanceof DOMException) return "the folder has been moved or deleted";
    throw error;
  }
}
