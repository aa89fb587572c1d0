/**
 * Whether two names are one: the one home of that question. Compared by the Unicode collation algorithm (UTS #10) in a
 * fixed locale, because others part Å from A or ı from I differently, after compatibility composition (UAX #15).
 */
const byAccent = new Intl.Collator("en", { sensitivity: "accent" });
const byLetter = new Intl.Collator("en", { sensitivity: "base" });

/** A name without spaces and invisible signs, composed and in its plain forms: what is compared of it. */
function comparedName(name: string): string {
  return name.normalize("NFKC").replace(/[\s\p{Cc}\p{Cf}\p{Default_Ignorable_Code_Point}]+/gu, "");
}

/**
 * Whether two names mean the same car, track or layout: they differ at most in case, spaces, or the way one sign is
 * written. Another accent is another name.
 * @example sameName("Varnholt Ríng ", "varnholt ri\u0301ng") // true
 * @example sameName("Cafe", "Café") // false
 */
export function sameName(a: string, b: string): boolean {
  return byAccent.compare(comparedName(a), comparedName(b)) === 0;
}

/**
 * Whether two names are different ones that may be meant for the same: they differ in accents, or in ways of writing
 * that a keyboard without them leaves. Never joined without asking.
 * @example likelyTwin("Cafe Ring", "Café Ring") // true
 */
export function likelyTwin(a: string, b: string): boolean {
  return !sameName(a, b) && byLetter.compare(comparedName(a), comparedName(b)) === 0;
}

/**
 * Keys for names, the same for names that are one. A collator gives no key, so each name gets the number of its first
 * like: keys of one `nameKeys` mean nothing to another.
 * @param like how near names must be to share a key; one name and its likely twins share a key by "likely"
 */
export function nameKeys(like: "same" | "likely" = "same"): (name: string) => number {
  const collator = like === "same" ? byAccent : byLetter;
  const known = new Map<string, number>();
  const sorted: { readonly name: string; readonly key: number }[] = [];
  return (name) => {
    const old = known.get(name);
    if (old !== undefined) return old;
    const compared = comparedName(name);
    let low = 0;
    let high = sorted.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (collator.compare(sorted[middle]?.name ?? "", compared) < 0) low = middle + 1;
      else high = middle;
    }
    const found = sorted[low];
    const isFound = found !== undefined && collator.compare(found.name, compared) === 0;
    const key = isFound ? found.key : sorted.length;
    if (!isFound) sorted.splice(low, 0, { name: compared, key });
    known.set(name, key);
    return key;
  };
}
