import type { CornerCell } from "./cornerCells.ts";

/** What a cell is called and how it is filled in. */
interface CellWords {
  /** Over its column, short. */
  readonly head: string;
  /** What it is called where it stands by itself, and for those who listen. */
  readonly label: string;
  readonly hint: string;
}

export const cellWords: { readonly [C in CornerCell]: CellWords } = {
  number: { head: "corner", label: "Number", hint: "corners stand in the order of the lap." },
  name: { head: "name", label: "Name", hint: "what you call it; it may stay empty." },
  direction: { head: "turns", label: "Turns", hint: "left or right; the first letter is enough." },
  bend: {
    head: "kind of bend",
    label: "Kind of bend",
    hint: "hairpin, slow, middling, fast or kink; the first letter is enough.",
  },
  after: {
    head: "what follows",
    label: "What follows",
    hint: "none where the next corner begins at once, a short, middling or long straight, or its length in metres: n, s, m, l or 250.",
  },
  sector: { head: "sector", label: "Sector", hint: "the number of the timed sector it lies in." },
  speed: {
    head: "lowest km/h",
    label: "Lowest speed",
    hint: "the lowest speed you see there with this car, also 60 mph or 25 m/s; it tells the radius.",
  },
  radius: { head: "radius m", label: "Radius", hint: "of the inner edge of the road, in metres." },
  width: { head: "width m", label: "Width", hint: "of the road without its kerbs, in metres." },
  angle: { head: "angle °", label: "Angle", hint: "degrees the road turns through: 90 for a right angle." },
  kerbEntry: {
    head: "kerb at entry m",
    label: "Kerb at entry",
    hint: "metres of kerb that may be used at the entry.",
  },
  kerbApex: {
    head: "kerb at apex m",
    label: "Kerb at apex",
    hint: "metres of kerb that may be used at the apex.",
  },
  kerbExit: {
    head: "kerb at exit m",
    label: "Kerb at exit",
    hint: "metres of kerb that may be used at the exit.",
  },
};
