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
  /** Chance a session, past or to come, that a driver who moves stops. */
  readonly stopping: number;
  /** Fewest sessions of a phase, and most places at which a phase is let begin. */
  readonly least: number;
  readonly mostC: number;
  /** How far the places may crowd towards the last session: 1 not at all, 2 by the square of the distance. */
  readonly crowding: number;
}

/**
 * The settings every figure uses, chosen on simulated drivers of six kinds so that those who go on moving are covered as
 * well as those who come to rest: `npm run bench -- calibration` prints how far, on other seeds. φ lies where learning slows
 * down by halves of what is left; one chance of stopping holds for the past as for what is to come, or forecasts after long
 * histories promise too much. Our methods, §5, have the values it was begun with.
 */
export const levelSettings: LevelSettings = {
  sigmas: [0.001, 0.0015, 0.0023, 0.0034, 0.005, 0.008],
  sNu: 3,
  sScale: 0.003,
  qls: [0, 0.3],
  qlw: [0.6, 0.4],
  phis: [0.5, 0.8, 0.9, 0.96, 1],
  phiw: [1, 1, 1, 1, 3.5],
  trends: [
    [-0.0004, 0.0004, 0.8],
    [-0.0015, 0.001, 1.2],
    [-0.005, 0.003, 1.3],
    [0.0005, 0.0007, 0.9],
    [0.0012, 0.0008, 0.6],
    [-0.012, 0.008, 0.4],
  ],
  pStill: 0.15,
  pMove: 0.65,
  pStop: 0.12,
  pStart: 0.08,
  stopping: 0.025,
  least: 2,
  mostC: 8,
  crowding: 2,
};
