import { useEffect, useState } from "react";

/**
 * Keeps the screen awake while it is wanted, where the browser allows it; taken again when the page is looked at again.
 * @returns whether the screen is being kept awake
 */
export function useWakeLock(isWanted: boolean): boolean {
  const [isHeld, setHeld] = useState(false);
  useEffect(() => {
    if (!isWanted || !("wakeLock" in navigator)) return;
    let lock: WakeLockSentinel | undefined;
    let isLeft = false;
    const take = async () => {
      if (document.visibilityState !== "visible") return;
      try {
        const taken = await navigator.wakeLock.request("screen");
        if (isLeft) return void taken.release();
        lock = taken;
        setHeld(true);
        taken.addEventListener("release", () => setHeld(false));
      } catch {
        // Refused (battery saver, no permission): the page says that the screen may go dark.
        setHeld(false);
      }
    };
    void take();
    document.addEventListener("visibilitychange", take);
    return () => {
      isLeft = true;
      document.removeEventListener("visibilitychange", take);
      void lock?.release();
    };
  }, [isWanted]);
  return isHeld;
}
