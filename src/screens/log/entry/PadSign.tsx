const strokes = {
  backspace: "M9 2h17v16H9L2 10z M13.5 6.5l7 7 M20.5 6.5l-7 7",
  clear: "M7 3l14 14 M21 3l-14 14",
  back: "M9 3L3 9l6 6 M3 9h14a6 6 0 0 1 0 9h-4",
  hide: "M6 3l8 8 8-8 M5 17h18",
};

/** A sign of the pad, drawn, because few fonts have it. */
export function PadSign({ of }: { readonly of: keyof typeof strokes }) {
  return (
    <svg
      width="28"
      height="20"
      viewBox="0 0 28 20"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.75"
      aria-hidden="true"
    >
      <path d={strokes[of]} strokeLinejoin="round" strokeLinecap="round" />
    </svg>
  );
}
