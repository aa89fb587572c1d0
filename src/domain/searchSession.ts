import { lapsInOrder } from "./lapSets.ts";
import type { Lap, Run, Session } from "./rows.ts";
import { standsInText } from "./searchStem.ts";
import { asksForLaps, type SearchTerms } from "./searchTerms.ts";
import { searchText } from "./searchText.ts";

/** A lap that was looked for. */
export interface LapFound {
  readonly run: Run;
  readonly lap: Lap;
  /** What the run is called by, and the place of the lap in its run, from 1. */
  readonly runNumber: number;
  readonly lapNumber: number;
}

/** What one session has of what is looked for. */
export interface SessionFound {
  /** The session itself answers: its words and its runs, or one of its laps where laps are asked for. */
  readonly isFound: boolean;
  readonly laps: readonly LapFound[];
}

/** Whether a session can have what is looked for, by its own fields. */
export function mayBeFound({ focus, from, to }: SearchTerms, session: Session): boolean {
  return (
    (focus === undefined || session.focus === focus) &&
    (from === undefined || session.date >= from) &&
    (to === undefined || session.date <= to)
  );
}

/**
 * Looks through one session. A lap is found by its remark, its time or a word of its own note; words that stand with
 * its run or session help to find it, but alone they find the session, not each of its laps.
 * @param comboName may be looked for by its words as well
 * @param runs of the session in order, without deleted ones, each with what it is called by
 */
export function searchSession(
  terms: SearchTerms,
  session: Session,
  comboName: string,
  runs: readonly { readonly run: Run; readonly number: number }[],
): SessionFound {
  if (!mayBeFound(terms, session)) return { isFound: false, laps: [] };
  const [words, tyres] = [wordsOf(terms.words), wordsOf(terms.tyres)];
  const missing = without(words, [session.note, session.conditions, comboName]);
  const asked = runs.filter(({ run }) =>
    tyres.every((word) => standsInText(word, searchText(run.tyres ?? ""))),
  );
  const isByLap = asksForLaps(terms);
  let stillMissing = missing;
  const laps = asked.flatMap(({ run, number }) => {
    const texts = [run.note, run.tyres, run.setup, run.assists, run.guest];
    stillMissing = without(stillMissing, texts);
    const missingInRun = without(missing, texts);
    return lapsInOrder(run).flatMap((lap, index): LapFound[] =>
      isLapFound(terms, lap, isByLap ? missingInRun : words, missingInRun)
        ? [{ run, lap, runNumber: number, lapNumber: index + 1 }]
        : [],
    );
  });
  const isFound = isByLap
    ? laps.length > 0
    : stillMissing.length === 0 && (tyres.length === 0 || asked.length > 0);
  return { isFound, laps };
}

const wordsOf = (text = "") => searchText(text).split(" ").filter(Boolean);

/** @param own words of which at least one must stand in the lap's note, unless it is found by its remark or time */
function isLapFound(
  terms: SearchTerms,
  lap: Lap,
  own: readonly string[],
  missing: readonly string[],
): boolean {
  const { remark, shortest, longest } = terms;
  if (remark !== undefined && !lap.remarks.some(({ kind }) => kind === remark)) return false;
  if (shortest !== undefined && !(lap.ms !== undefined && lap.ms >= shortest)) return false;
  if (longest !== undefined && !(lap.ms !== undefined && lap.ms <= longest)) return false;
  if (asksForLaps(terms)) return without(missing, [lap.note]).length === 0;
  if (lap.note === undefined || own.length === 0) return false;
  const note = searchText(lap.note);
  return own.some((word) => standsInText(word, note)) && missing.every((word) => standsInText(word, note));
}

/** The words that stand in none of the texts. */
function without(words: readonly string[], texts: readonly (string | undefined)[]): readonly string[] {
  if (words.length === 0) return words;
  const text = searchText(texts.filter((one) => one !== undefined && one !== "").join(" "));
  return text === "" ? words : words.filter((word) => !standsInText(word, text));
}
