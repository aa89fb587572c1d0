/**
 * Text as it is searched: without case, accents, ways of writing one sign, and surplus spaces. Finds more than is the
 * same; whether two names are one says `sameName`.
 */
export function searchText(text: string): string {
  return text
    .normalize("NFKD")
    .replace(/\p{Mark}/gu, "")
    .toLowerCase()
    .replace(/\s+/g, " ")
    .trim();
}
