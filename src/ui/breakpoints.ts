/** Widths of the window in CSS px at which the page is laid out anew; every style sheet keeps to them. */
export const breakpoints = {
  /** Below it a name of one word may need a line of its own. */
  narrow: 360,
  /** Below it the bar stands at the bottom and there is one column: a phone held upright. */
  phone: 720,
  /** From here on a second column is of use. */
  desk: 1000,
  /** From here on the content is as wide as it gets. */
  wide: 1280,
} as const;

/**
 * Widths of a box, in rem, from which on what stands in it has room beside it: unlike the window's they follow the size of
 * the text, so that larger letters are laid out as on a smaller screen.
 */
export const boxWidths = {
  /** Below it the keys under the entry line stand in fewer columns: a phone with its letters enlarged. */
  keys: 17,
  /** Below it two figures stand beside each other, no more. */
  narrow: 20,
  /** From here on a short answer stands beside its question. */
  pair: 32,
  /** From here on there are two columns, and one line a row. */
  desk: 58,
} as const;

/** A media query for windows narrower than one of them. */
export const narrowerThan = (name: keyof typeof breakpoints) => `(max-width: ${breakpoints[name] - 1}px)`;
