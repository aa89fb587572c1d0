import { deleteDatabase } from "#db";

/** Enters a database that was just made in the list. One that cannot be entered would be lost in the browser: it goes. */
export async function enterOrDelete(name: string, enter: () => Promise<unknown>): Promise<void> {
  try {
    await enter();
  } catch (error) {
    await deleteDatabase(name);
    throw error;
  }
}
