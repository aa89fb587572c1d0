/** Lower triangle L of a positive definite matrix, A = L·Lᵀ, row by row. */
export function cholesky(matrix: readonly (readonly number[])[]): number[][] {
  const lower: number[][] = [];
  matrix.forEach((row, i) => {
    const made: number[] = [];
    for (let j = 0; j <= i; j++) {
      const other = j === i ? made : (lower[j] ?? []);
      let left = row[j] ?? 0;
      for (let k = 0; k < j; k++) left -= (made[k] ?? 0) * (other[k] ?? 0);
      made.push(i === j ? Math.sqrt(left) : left / (other[j] ?? 1));
    }
    lower.push(made);
  });
  return lower;
}

/** Solves L·u = b. */
export function solveLower(lower: readonly (readonly number[])[], b: readonly number[]): number[] {
  const u: number[] = [];
  lower.forEach((row, i) => {
    let left = b[i] ?? 0;
    for (let k = 0; k < i; k++) left -= (row[k] ?? 0) * (u[k] ?? 0);
    u.push(left / (row[i] ?? 1));
  });
  return u;
}

/** Solves Lᵀ·u = b. */
export function solveUpper(lower: readonly (readonly number[])[], b: readonly number[]): number[] {
  const u = [...b];
  for (let i = lower.length - 1; i >= 0; i--) {
    let left = b[i] ?? 0;
    for (let k = i + 1; k < lower.length; k++) left -= (lower[k]?.[i] ?? 0) * (u[k] ?? 0);
    u[i] = left / (lower[i]?.[i] ?? 1);
  }
  return u;
}
