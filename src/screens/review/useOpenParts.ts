import { useDevice } from "#state/device.ts";

/** Which questions stand open, and the way to change it. */
export interface OpenParts {
  readonly isOpen: (id: string) => boolean;
  readonly set: (id: string, isOpen: boolean) => void;
}

/**
 * The questions that stand open: as the driver left them on this device.
 * @param first those that stand open until one has been opened or hidden
 */
export function useOpenParts(first: readonly string[]): OpenParts {
  const left = useDevice(({ reviewOpen }) => reviewOpen);
  const change = useDevice((device) => device.change);
  const openOf = (reviewOpen: unknown): readonly string[] => (Array.isArray(reviewOpen) ? reviewOpen : first);
  return {
    isOpen: (id) => openOf(left).includes(id),
    set: (id, isOpen) =>
      change(({ reviewOpen }) => {
        const others = openOf(reviewOpen).filter((one) => one !== id);
        return { reviewOpen: isOpen ? [...others, id] : others };
      }),
  };
}
