/** For so long it is taken to be the same: nobody sees a zone change sooner. */
const staysMs = 1000;

/**
 * The zone this machine is in, IANA name. To ask a browser for it takes longer than to work out what a lap changes, and a page
 * asks many times in one go: it is looked up once a second at most.
 * @param clock epoch ms
 */
export function localZone(clock: () => number): () => string {
  let lookedAt = Number.NEGATIVE_INFINITY;
  let zone = "";
  return () => {
    const now = clock();
    if (Math.abs(now - lookedAt) >= staysMs) {
      zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
      lookedAt = now;
    }
    return zone;
  };
}
