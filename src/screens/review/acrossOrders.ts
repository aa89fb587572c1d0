import { type AcrossFigure, acrossFigures, acrossValue, type ComboLine } from "#stats";
import { acrossWords, certaintyOf } from "#words";

/** One combo's line with its name. */
export interface NamedLine {
  readonly line: ComboLine;
  readonly name: string;
}

/** The two sets of figures: what the weeks brought, and what compares from circuit to circuit. */
export type AcrossSide = "weeks" | "circuits";

/** An order of the rows, called as a driver asks for it. */
interface Order {
  readonly value: string;
  readonly label: string;
  /** What stands first has the least of it; undefined stands last. */
  readonly by: (line: ComboLine) => number | undefined;
}

const drivenLast: Order = { value: "last", label: "driven last", by: ({ lastAt }) => -lastAt };

/** Figures of which more is worse, all but the share of clean laps. */
const worstFirst = (figure: AcrossFigure): Order => ({
  value: figure,
  label: `${acrossWords[figure].name.toLowerCase()}, worst first`,
  by: (line) => {
    const value = acrossValue(line, figure);
    return value === undefined ? undefined : acrossWords[figure].isHigherBetter ? value : -value;
  },
});

/** The orders of each set, the one it begins with first. */
export const acrossOrders: Readonly<Record<AcrossSide, readonly Order[]>> = {
  weeks: [
    drivenLast,
    { value: "gained", label: "gained most", by: gained },
    { value: "target", label: "furthest from target", by: ({ toGo }) => toGo && -toGo.percent },
  ],
  circuits: [drivenLast, ...acrossFigures.map(worstFirst)],
};

/** What may be chance is no gain. */
function gained({ gain }: ComboLine): number | undefined {
  if (!gain.known) return undefined;
  return certaintyOf(gain.value.chanceFaster) === "may be chance" ? 0 : gain.value.change;
}

/** Rows in an order; what is not known stands last. */
export function inOrderOf(rows: readonly NamedLine[], { by }: Order): NamedLine[] {
  return rows.toSorted((a, b) => {
    const [left, right] = [by(a.line), by(b.line)];
    if (left === undefined || right === undefined) return left === right ? 0 : left === undefined ? 1 : -1;
    return left - right;
  });
}

/** Sessions from which on a combo has a level to tell. */
const enough = 4;

/** The set that says more: where most combos have too few sessions for a level, what compares circuits. */
export function sideToBegin(rows: readonly NamedLine[]): AcrossSide {
  const few = rows.filter(({ line }) => line.sessions < enough).length;
  return few * 2 > rows.length ? "circuits" : "weeks";
}
