/** The floor under entry, stats and physics: plain numbers, each once. What laps mean is not known here. */
export { CONFIDENCE, VERY_LIKELY } from "./confidence.ts";
export { chiSquaredCdf, chiSquaredQuantile } from "./distributions/chiSquared.ts";
export { normalCdf } from "./distributions/normalCdf.ts";
export { normalQuantile } from "./distributions/normalQuantile.ts";
export { quickNormalCdf } from "./distributions/quickNormal.ts";
export { studentTCdf, studentTQuantile } from "./distributions/studentT.ts";
export { mean } from "./mean.ts";
export { median } from "./median.ts";
export { MAD_SCALE, medianAbsoluteDeviation, medianDistance } from "./medianAbsoluteDeviation.ts";
export {
  type Numbers,
  requireFinite,
  requireFraction,
  requireNumber,
  requireNumberAt,
  requireSameLength,
} from "./numbers.ts";
export { quantile, quantileWithin } from "./quantile.ts";
export { select } from "./select.ts";
export { insertSorted, medianAbsoluteDeviationOfSorted, medianOfSorted } from "./sorted.ts";
export { squaredDeviations } from "./squaredDeviations.ts";
export { standardDeviation } from "./standardDeviation.ts";
