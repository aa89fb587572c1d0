import { liveQuery } from "dexie";

/**
 * Tells of stored rows at once and after every change, in other tabs too, outside of drawing. When the logbook is lost or
 * closed nothing more is told; whoever draws says so. Returns the function that ends it.
 * @param read awaits nothing but the book
 */
export function followRows<T>(read: () => Promise<T>, tell: (rows: T) => void): () => void {
  const subscription = liveQuery(read).subscribe({ next: tell, error: () => undefined });
  return () => subscription.unsubscribe();
}
