const key = "lap-ledger tab";

/** The mark of this tab, which a reload keeps and a duplicated tab copies; undefined where there is none. */
export function readTabMark(): string | undefined {
  try {
    return window.sessionStorage.getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Keeps the mark of this tab; a browser that lets the page store nothing gives each page a new one. */
export function keepTabMark(mark: string): void {
  try {
    window.sessionStorage.setItem(key, mark);
  } catch {
    return;
  }
}

/** Removes the mark of this tab; false when the browser does not let it. */
export function forgetTabMark(): boolean {
  try {
    window.sessionStorage.removeItem(key);
    return window.sessionStorage.getItem(key) === null;
  } catch {
    return false;
  }
}
