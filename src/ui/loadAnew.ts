const key = "lap-ledger loaded anew";

/** A part that fails again so soon after will not come by loading once more. */
const leastMs = 60_000;

/**
 * Loads the page anew because a part of the app did not come through: a browser keeps a script that failed as failed for as
 * long as the page stands, and what is typed outlives the page. Never resolves then. Throws what went wrong where
 * that was done within the last minute, or where nothing would give the page again.
 */
export async function loadAnew(fault: unknown): Promise<never> {
  if (!(await isStillThere()) || !markNow()) throw fault;
  window.location.reload();
  return new Promise(() => undefined);
}

/** False within a minute of the last time, and where the tab can remember nothing. */
function markNow(): boolean {
  try {
    const now = Date.now();
    const last = Number(window.sessionStorage.getItem(key) ?? Number.NEGATIVE_INFINITY);
    if (Math.abs(now - last) < leastMs) return false;
    window.sessionStorage.setItem(key, String(now));
    return true;
  } catch {
    return false;
  }
}

/** The worker that keeps the app on the device, or else the server, has the page. */
async function isStillThere(): Promise<boolean> {
  const { serviceWorker } = navigator as { readonly serviceWorker?: ServiceWorkerContainer };
  if (serviceWorker?.controller) return true;
  try {
    return (await fetch(window.location.pathname, { method: "HEAD" })).ok;
  } catch {
    return false;
  }
}
