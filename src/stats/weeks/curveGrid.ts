/** Values of a grid at equal steps of the logarithm, both ends in. */
function logSpaced(from: number, to: number, count: number): number[] {
  return Array.from({ length: count }, (_, index) => from * (to / from) ** (index / (count - 1)));
}

/** Half-lives in laps, with equal prior. */
export const halfLives = logSpaced(15, 2000, 25);

/** Prior probability that the driver is flat. */
const flatPrior = 0.15;

const shares = logSpaced(0.002, 0.15, 24);
const totalRoot = shares.reduce((sum, share) => sum + Math.sqrt(share), 0);

/** Spans as shares of the usual lap, each with its prior over all half-lives together. */
export const spans = shares.map((share) => ({
  share,
  prior: ((1 - flatPrior) * Math.sqrt(share)) / totalRoot,
}));

/** The flat curve, whose half-life does not matter. */
export const flat = { share: 0, prior: flatPrior };

/** Correlations of neighbouring sessions, with equal prior. */
export const correlations = [0, 0.35, 0.7];
