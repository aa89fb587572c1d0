import { faultOf } from "./fault.ts";

/** What was done on the shelf, or the fault that says what was not. */
export async function storedOnShelf<R>(done: PromiseLike<R>, notDone: string): Promise<R> {
  try {
    return await done;
  } catch (error) {
    throw faultOf(error, notDone);
  }
}
