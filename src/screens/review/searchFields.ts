import {
  aboutRemark,
  type Focus,
  type FormReading,
  formatLapTime,
  isCalendarDate,
  type RemarkKind,
  type SearchTerms,
  sayDate,
} from "#domain";
import { readTime } from "#entry";

/** What is looked for as it is being typed; "" is not asked for. */
export interface TypedSearch {
  readonly words: string;
  readonly remark: RemarkKind | "";
  readonly focus: Focus | "";
  readonly tyres: string;
  readonly from: string;
  readonly to: string;
  readonly shortest: string;
  readonly longest: string;
}

/** The fields that hold what an address asks for. */
export function typedOf(terms: SearchTerms): TypedSearch {
  const { shortest, longest } = terms;
  return {
    words: terms.words ?? "",
    remark: terms.remark ?? "",
    focus: terms.focus ?? "",
    tyres: terms.tyres ?? "",
    from: terms.from ?? "",
    to: terms.to ?? "",
    shortest: shortest === undefined ? "" : formatLapTime(shortest),
    longest: longest === undefined ? "" : formatLapTime(longest),
  };
}

/** Reads the fields: what to look for, or what is wrong in which field. */
export function readSearch(
  typed: TypedSearch,
  displayDecimals: number,
): FormReading<SearchTerms, keyof TypedSearch> {
  const time = (text: string) => (text.trim() === "" ? undefined : readTime(text, { displayDecimals }));
  const [shortest, longest] = [time(typed.shortest), time(typed.longest)];
  const areTimesTurned = shortest?.ok && longest?.ok && shortest.ms > longest.ms;
  const areDaysTurned = isCalendarDate(typed.from) && isCalendarDate(typed.to) && typed.from > typed.to;
  const problems = {
    ...(shortest?.ok === false && { shortest: shortest.problem }),
    ...(longest?.ok === false && { longest: longest.problem }),
    ...(areTimesTurned === true && {
      longest: {
        wrong: "The longest time is shorter than the shortest.",
        right: "Write a longer one, or none.",
      },
    }),
    ...(areDaysTurned && {
      to: { wrong: "The last day lies before the first.", right: "Pick a later one, or none." },
    }),
  };
  if (Object.keys(problems).length > 0) return { ok: false, problems };
  const terms = {
    words: typed.words.trim() || undefined,
    remark: typed.remark || undefined,
    focus: typed.focus || undefined,
    tyres: typed.tyres.trim() || undefined,
    from: isCalendarDate(typed.from) ? typed.from : undefined,
    to: isCalendarDate(typed.to) ? typed.to : undefined,
    shortest: shortest?.ok ? shortest.ms : undefined,
    longest: longest?.ok ? longest.ms : undefined,
  };
  const asked = Object.entries(terms).filter(([, value]) => value !== undefined);
  return { ok: true, value: Object.fromEntries(asked) };
}

/**
 * What is looked for beside words, in short.
 * @example "off · tyres soft · from Mon 2 Nov 2026 · up to 1:24.000"
 */
export function sayTerms({ remark, focus, tyres, from, to, shortest, longest }: SearchTerms): string {
  const said = [
    remark && aboutRemark(remark).word,
    focus && `focus: ${focus}`,
    tyres && `tyres ${tyres}`,
    from && `from ${sayDate(from)}`,
    to && `to ${sayDate(to)}`,
    shortest !== undefined && `from ${formatLapTime(shortest)}`,
    longest !== undefined && `up to ${formatLapTime(longest)}`,
  ].filter(Boolean);
  return said.length === 0 ? "any" : said.join(" · ");
}
