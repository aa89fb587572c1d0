import { forgetDevice } from "./device.ts";
import { forgetTabMark } from "./tabMark.ts";

/**
 * Removes what the app keeps on this device beside its databases: its choices, the mark of this tab, its own files kept for opening without a
 * connection, and the worker that serves them. Other apps of the same address are left alone.
 * @returns what could not be removed, in words
 */
export async function eraseDevice(): Promise<readonly string[]> {
  const left: string[] = [];
  const workers = (navigator as { readonly serviceWorker?: ServiceWorkerContainer }).serviceWorker;
  const registration = await workers?.getRegistration().catch(() => undefined);
  if (registration !== undefined) {
    await settled(registration);
    for (const key of await window.caches.keys())
      if (key.endsWith(registration.scope)) await window.caches.delete(key);
    if ((await window.caches.keys()).some((key) => key.endsWith(registration.scope)))
      left.push("the files kept for opening without a connection");
    if (!(await registration.unregister())) left.push("the worker that serves them");
  }
  if (!forgetDevice()) left.push("the choices of this device");
  if (!forgetTabMark()) left.push("the mark of this tab");
  return left;
}

/**
 * A worker that is still fetching the app's files, or taking over, would put back what is removed meanwhile. A first one
 * takes over by itself; a later one waits.
 */
function settled({ installing, waiting, active }: ServiceWorkerRegistration): Promise<void> {
  const ends =
    active === null || active.state !== "activated" ? ["activated", "redundant"] : ["installed", "redundant"];
  const worker =
    active !== null && active.state !== "activated" ? active : (installing ?? (active ? null : waiting));
  return new Promise((resolve) => {
    if (worker === null) return resolve();
    const look = () => {
      if (ends.includes(worker.state)) resolve();
    };
    worker.addEventListener("statechange", look);
    look();
  });
}
