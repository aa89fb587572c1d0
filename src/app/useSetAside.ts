import { useEffect } from "react";
import { LedgerFault, setAside } from "#db";
import { useLogbook, useUnreadable } from "#live";
import { useNotices } from "#state/notices.ts";

/** Sets aside what any read has found to be no row, here or in a worker, so that it is kept, named and can be mended. */
export function useSetAside(): void {
  const { book } = useLogbook();
  const say = useNotices((notices) => notices.say);
  const found = useUnreadable();
  useEffect(() => {
    const bad = found.filter(({ aside }) => aside !== undefined);
    // Where nothing can be written the page says so by itself.
    if (bad.length === 0 || book.status.get().kind !== "ok") return;
    setAside(book, bad).catch((fault: unknown) => {
      if (!(fault instanceof LedgerFault)) throw fault;
      say({ kind: "fault", text: fault.message, actions: [] });
    });
  }, [found, book, say]);
}
