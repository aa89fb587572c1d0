/** A clock that stands still until it is moved; it may go back. */
export function fixedClock(at: number) {
  let now = at;
  return {
    now: () => now,
    set: (to: number) => {
      now = to;
    },
    pass: (ms: number) => {
      now += ms;
    },
  };
}
