/**
 * The zone this machine is in, IANA name. To ask a browser for it takes longer than to work out what a lap changes, and a page
 * that is drawn asks many times in one go: it is looked up once in such a go.
 */
export function localZone(): () => string {
  let zone: string | undefined;
  return () => {
    if (zone === undefined) {
      zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
      queueMicrotask(() => {
        zone = undefined;
      });
    }
    return zone;
  };
}
