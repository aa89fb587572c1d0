/** Says how many of how many were drawn; nothing when all were. */
export function sayThinned(drawn: number, all: number): string | undefined {
  return drawn === all ? undefined : `${drawn} of ${all} sessions are drawn; the table has them all.`;
}
