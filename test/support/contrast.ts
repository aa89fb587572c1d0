/** Relative luminance of "#rrggbb" by WCAG 2.2, 0 (black) to 1 (white). */
export function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) =>
    linear(Number.parseInt(colour.slice(at, at + 2), 16) / 255),
  );
  if (red === undefined || green === undefined || blue === undefined) throw new Error(`no colour: ${colour}`);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio of two colours by WCAG 2.2, 1 to 21, unrounded. */
export function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((one, other) => one - other);
  return ((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05);
}

function linear(channel: number): number {
  return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
}
