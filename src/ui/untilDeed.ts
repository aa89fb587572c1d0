/**
 * Calls `end` when the driver does anything at all in a place: presses, types or turns the wheel.
 * @returns stops listening
 */
export function untilDeed(place: Window | HTMLElement, end: () => void): () => void {
  place.addEventListener("pointerdown", end);
  place.addEventListener("keydown", end);
  place.addEventListener("wheel", end);
  return () => {
    place.removeEventListener("pointerdown", end);
    place.removeEventListener("keydown", end);
    place.removeEventListener("wheel", end);
  };
}
