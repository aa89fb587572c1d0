/** Grid and priors of the level model; sizes are shares of the lap, trends shares of the lap a session. */
export interface LevelSettings {
  /** Standard deviations of a session's median about the level. */
  readonly sigmas: readonly number[];
  /** Their scaled inverse-χ prior: degrees of freedom and scale. */
  readonly sNu: number;
  readonly sScale: number;
  /** Noise of the level itself, in units of σ a session, with weights. */
  readonly qls: readonly number[];
  readonly qlw: readonly number[];
  /** What is left of a trend after one session, with weights. */
  readonly phis: readonly number[];
  readonly phiw: readonly number[];
  /** Prior mean, standard deviation and weight of a trend where it begins. */
  readonly trends: readonly (readonly [mean: number, deviation: number, weight: number])[];
  /** Prior weights of the four kinds: still, moving, moving then still, still then moving. */
  readonly pStill: number;
  readonly pMove: number;
  readonly pStop: number;
  readonly pStart: number;
  /** Fewest sessions of a phase, and most places at which a phase is let begin. */
  readonly least: number;
  readonly mostC: number;
}

/**
 * The settings every figure uses. Where they differ from the starting values of our methods, §5 (more for a trend that
 * does not shrink, for a driver who stops and for times that rise), they were chosen on simulated drivers, so that those who
 * go on moving are covered as well as those who come to rest; `npm run bench` prints the table on other seeds.
 */
export const levelSettings: LevelSettings = {
  sigmas: [0.001, 0.0015, 0.0023, 0.0034, 0.005, 0.008],
  sNu: 3,
  sScale: 0.003,
  qls: [0, 0.3],
  qlw: [0.6, 0.4],
  phis: [0.35, 0.6, 0.8, 0.9, 0.97, 1],
  phiw: [1, 1, 1, 1, 1, 5],
  trends: [
    [-0.0004, 0.0004, 0.6],
    [-0.0015, 0.001, 1],
    [-0.005, 0.003, 1.5],
    [0.0005, 0.0007, 0.9],
    [0.0012, 0.0008, 0.6],
    [-0.012, 0.008, 0.8],
  ],
  pStill: 0.15,
  pMove: 0.59,
  pStop: 0.18,
  pStart: 0.08,
  least: 2,
  mostC: 8,
};
