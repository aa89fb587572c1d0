import { mean, type Numbers, requireFinite, requireSameLength } from "#numbers";

/** A straight line by least squares; what needs more points than there are is undefined. */
export interface LinearFit {
  readonly intercept: number;
  readonly slope: number;
  readonly interceptSE: number | undefined;
  readonly slopeSE: number | undefined;
  readonly residualSD: number | undefined;
  readonly rSquared: number | undefined;
}

/**
 * Straight line y = intercept + slope·x by least squares on centred values, with its standard errors.
 * @returns undefined for fewer than two different x; standard errors need three points, rSquared two different y
 * @throws RangeError for values that are not finite or columns of different length
 * @example linearFit([0, 1, 2], [1, 3, 5])?.slope // 2
 */
export function linearFit(x: Numbers, y: Numbers): LinearFit | undefined {
  requireSameLength(x, y);
  requireFinite(x, "x");
  requireFinite(y, "y");
  const centreX = mean(x);
  const centreY = mean(y);
  if (centreX === undefined || centreY === undefined) return undefined;
  const n = x.length;
  let xx = 0;
  let xy = 0;
  let yy = 0;
  for (let i = 0; i < n; i++) {
    const dx = (x[i] as number) - centreX;
    const dy = (y[i] as number) - centreY;
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
  }
  if (xx === 0) return undefined;
  const slope = xy / xx;
  let residuals = 0;
  for (let i = 0; i < n; i++) {
    const residual = (y[i] as number) - centreY - slope * ((x[i] as number) - centreX);
    residuals += residual * residual;
  }
  const residualSD = n > 2 ? Math.sqrt(residuals / (n - 2)) : undefined;
  return {
    intercept: centreY - slope * centreX,
    slope,
    interceptSE: residualSD === undefined ? undefined : residualSD * Math.sqrt(1 / n + centreX ** 2 / xx),
    slopeSE: residualSD === undefined ? undefined : residualSD / Math.sqrt(xx),
    residualSD,
    rSquared: yy === 0 ? undefined : 1 - residuals / yy,
  };
}
