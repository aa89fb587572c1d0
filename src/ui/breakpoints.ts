/**
 * Widths of the window in CSS px at which the page is laid out anew; every style sheet keeps to them. Where letters are
 * enlarged a box asks for its own width in letters (@container), because a phone at 200 % has room for half as many.
 */
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

/** A media query for windows narrower than one of them. */
export const narrowerThan = (name: keyof typeof breakpoints) => `(max-width: ${breakpoints[name] - 1}px)`;
