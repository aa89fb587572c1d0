import { useDevice } from "./device.ts";

/** Whether the browser has promised to keep this address's data until the driver deletes them. */
export type Kept = "kept" | "not kept" | "unknown";

export interface StorageState {
  readonly kept: Kept;
  /** Bytes in use by this address, as the browser estimates them; absent where it does not say. */
  readonly usageBytes?: number;
}

/** Asks the browser to keep the data for good, and remembers the answer. Ask after a deed, never on load. */
export async function askToKeep(): Promise<Kept> {
  const kept = await answerOf((storage) => storage.persist());
  if (kept !== "unknown") useDevice.getState().change({ askedToPersist: kept === "kept" });
  return kept;
}

/** How it stands with the storage now. Free space is left out: browsers report it wrongly on purpose. */
export async function storageState(): Promise<StorageState> {
  const kept = await answerOf((storage) => storage.persisted());
  try {
    const { usage } = (await storageOf()?.estimate()) ?? {};
    return usage === undefined ? { kept } : { kept, usageBytes: usage };
  } catch {
    return { kept };
  }
}

/**
 * Bytes that the browser says it still allows this address; undefined where it does not say. Not what is free on the
 * disk: browsers hide that.
 */
export async function spaceAllowed(): Promise<number | undefined> {
  try {
    const { quota, usage } = (await storageOf()?.estimate()) ?? {};
    return quota === undefined || usage === undefined ? undefined : Math.max(0, quota - usage);
  } catch {
    return undefined;
  }
}

/** Whether this browser clears what a site stored unless that is opened from the home screen: those that say so tell it. */
export function isClearedUnlessInstalled(): boolean {
  return (navigator as { readonly standalone?: boolean }).standalone === false;
}

/** A private window, an old browser or an address without https may lack it, or refuse by an error. */
function storageOf(): StorageManager | undefined {
  return (navigator as { readonly storage?: StorageManager }).storage;
}

async function answerOf(ask: (storage: StorageManager) => Promise<boolean>): Promise<Kept> {
  const storage = storageOf();
  if (storage === undefined) return "unknown";
  try {
    return (await ask(storage)) ? "kept" : "not kept";
  } catch {
    return "unknown";
  }
}
