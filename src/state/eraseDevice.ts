import { forgetDevice } from "./device.ts";

/**
 * Removes what the app keeps on this device beside its databases: its choices, its own files kept for opening without a
 * connection, and the worker that serves them. Other apps of the same address are left alone.
 * @returns what could not be removed, in words
 */
export async function eraseDevice(): Promise<readonly string[]> {
  const left: string[] = [];
  const workers = (navigator as { readonly serviceWorker?: ServiceWorkerContainer }).serviceWorker;
  const registration = await workers?.getRegistration().catch(() => undefined);
  if (registration !== undefined) {
    for (const key of await window.caches.keys())
      if (key.endsWith(registration.scope)) await window.caches.delete(key);
    if ((await window.caches.keys()).some((key) => key.endsWith(registration.scope)))
      left.push("the files kept for opening without a connection");
    if (!(await registration.unregister())) left.push("the worker that serves them");
  }
  if (!forgetDevice()) left.push("the choices of this device");
  return left;
}
