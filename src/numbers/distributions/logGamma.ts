const coefficients = [
  0.9999999999998099, 676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406,
  12.507343278686905, -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
] as const;

/**
 * Natural logarithm of the gamma function for x > 0, to about 15 digits (Lanczos 1964 with g = 7 and nine terms).
 * @example logGamma(5) // ln 24
 */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const y = x - 1;
  let sum: number = coefficients[0];
  for (let i = 1; i < coefficients.length; i++) sum += (coefficients[i] as number) / (y + i);
  const t = y + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (y + 0.5) * Math.log(t) - t + Math.log(sum);
}
