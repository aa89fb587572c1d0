import { useEffect } from "react";
import { parseAddress, printAddress, type ReviewAddress } from "#state/address.ts";
import { useDevice } from "#state/device.ts";

/**
 * What to review: as the address says, and where it names no combo as it was left, if that combo is still there. What is
 * looked at is remembered on this device.
 * @param isThere whether a combo is in this logbook
 */
export function useRemembered(asked: ReviewAddress, isThere: (comboId: string) => boolean): ReviewAddress {
  const left = useDevice(({ review }) => review);
  const change = useDevice((device) => device.change);
  const { comboId } = asked;
  const isKept = comboId !== undefined && isThere(comboId);
  const hash = isKept ? printAddress(asked) : undefined;
  useEffect(() => {
    if (hash !== undefined && hash !== left) change({ review: hash });
  }, [hash, left, change]);
  if (comboId !== undefined || typeof left !== "string") return asked;
  const kept = parseAddress(left);
  const isWhole = kept.place === "review" && kept.part === undefined && kept.comboId !== undefined;
  return isWhole && isThere(kept.comboId) ? kept : asked;
}
