/** A name without case, accents, spaces and invisible signs: the same for all ways of writing one name. */
export function bareName(name: string): string {
  return name
    .normalize("NFD")
    .replace(/[\p{M}\p{Cf}\s]+/gu, "")
    .toLowerCase();
}

/**
 * Whether two names mean the same car, track or layout: they differ at most in case, accents or spaces.
 * @example sameName("Marlow Fén ", "marlow fen") // true
 */
export function sameName(a: string, b: string): boolean {
  return bareName(a) === bareName(b);
}
