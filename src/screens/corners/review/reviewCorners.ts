import type { Corner } from "#domain";

/** The layout's corners and those told here, in lap order. */
export function allCorners(known: readonly Corner[], told: readonly number[]): readonly Corner[] {
  const others = told.filter((number) => !known.some((corner) => corner.number === number));
  return [...known, ...others.map((number) => ({ number }))].sort((a, b) => a.number - b.number);
}

/** A radius says more than a kind of bend, and a length more than a kind of straight. */
export function asksOf(known: Corner | undefined) {
  return {
    bend: known?.bend === undefined && known?.radius === undefined,
    after: known?.after === undefined && known?.afterLength === undefined,
  };
}
