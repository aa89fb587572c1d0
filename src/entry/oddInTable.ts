import { isMeasure, type Lap, type Run } from "#domain";
import { medianOfSorted } from "#numbers";
import type { Known, TypedLap } from "./context.ts";
import { fewestForUsual, type Ground, groundOf } from "./grounds.ts";
import { factOfWritten } from "./judge.ts";
import { isAlike, knownFrom, type RunsAround } from "./knownFrom.ts";

type Kind = Pick<Run, "kind" | "effort" | "surface" | "guest">;

/** A lap of a table, as far as it is judged. */
interface RowLap {
  readonly lap: TypedLap & Pick<Lap, "isOdd">;
}

interface TableRun<L> {
  readonly settings: Kind;
  readonly laps: readonly L[];
}

interface TableSession<L> {
  readonly runs: readonly TableRun<L>[];
}

/** The sessions of one combo in a table. */
export interface TableCombo<L> {
  /** The same text for all combos of one layout. */
  readonly layout: string;
  readonly sessions: readonly TableSession<L>[];
  /** What the book knows; undefined while it has not been read. */
  readonly around: (Omit<RunsAround, "session"> & { readonly lengthMetres: number | undefined }) | undefined;
}

/**
 * Laps of a table that lie beyond the usual, each with what is odd about it: judged by their own session from three
 * laps of its kind on, else by the table's laps of the combo, else by what the book knows of the combo, its layout and
 * others. One that was confirmed as odd before is not pointed at again.
 */
export function oddInTable<L extends RowLap>(combos: readonly TableCombo<L>[]): Map<L, string> {
  const usual = combos.map(({ layout, sessions }) => {
    const times = measures(sessions.flatMap(({ runs }) => runs));
    return { layout, ms: times.length < fewestForUsual ? undefined : medianOfSorted(times) };
  });
  const odd = new Map<L, string>();
  combos.forEach((combo, index) => {
    const others = (isOnLayout: boolean) =>
      usual.flatMap(({ layout, ms }, place) =>
        place !== index && ms !== undefined && (layout === combo.layout) === isOnLayout ? [ms] : [],
      );
    pointAt(combo, { layout: others(true), elsewhere: others(false) }, odd);
  });
  return odd;
}

type Others = Required<Pick<Known, "layout" | "elsewhere">>;

function pointAt<L extends RowLap>(combo: TableCombo<L>, others: Others, odd: Map<L, string>): void {
  const groundIn = groundsOf(combo, others);
  for (const session of combo.sessions)
    for (const { settings, laps } of session.runs) {
      const ground = groundIn(session, settings);
      const first = settings.kind === "race" ? laps[0] : undefined;
      for (const one of laps) {
        const found = factOfWritten(one.lap, one === first ? { ...ground, own: undefined } : ground);
        if (found !== undefined && one.lap.isOdd !== true) odd.set(one, found);
      }
    }
}

/** What laps of a kind in a session are judged by. Times of the whole combo are sorted once a kind. */
function groundsOf<L extends RowLap>({ sessions, around }: TableCombo<L>, others: Others) {
  const all = sessions.flatMap(({ runs }) => runs);
  const ofKind = new Map<string, { readonly known: Known; readonly like: readonly number[] }>();
  const knownOf = (kind: Kind) => {
    const key = JSON.stringify([kind.kind, kind.effort, kind.surface, kind.guest]);
    const found = ofKind.get(key);
    if (found !== undefined) return found;
    const inBook = knownFrom(kind, { session: [], ...(around ?? nothingAround) }, around?.lengthMetres);
    const notLike = measures(all.filter(({ settings }) => !isAlike(settings, kind)));
    const known: Known = {
      ...inBook,
      here: notLike.length < fewestForUsual ? (inBook.here ?? []) : notLike,
      layout: [...(inBook.layout ?? []), ...others.layout],
      elsewhere: [...(inBook.elsewhere ?? []), ...others.elsewhere],
    };
    const made = { known, like: measures(all.filter(({ settings }) => isAlike(settings, kind))) };
    ofKind.set(key, made);
    return made;
  };
  return (session: TableSession<L>, kind: Kind): Ground => {
    const { known, like } = knownOf(kind);
    const own = measures(session.runs.filter(({ settings }) => isAlike(settings, kind)));
    // One or two laps do not judge themselves; among others of the combo they weigh nothing.
    const page = like.length - own.length < fewestForUsual ? known.page : like;
    return groundOf(
      {
        known: { ...known, ...(page && { page }) },
        isPaceRun: kind.kind === "pace" && (kind.effort === "full" || kind.effort === "brisk"),
        isDry: kind.surface === "dry",
      },
      { run: [], session: own.length < fewestForUsual ? [] : own },
    );
  };
}

const nothingAround = { page: [], layout: [], elsewhere: [] };

function measures(runs: readonly TableRun<RowLap>[]): number[] {
  return runs
    .flatMap(({ laps }) => laps.flatMap(({ lap }) => (isMeasure(lap) ? [lap.ms] : [])))
    .sort((a, b) => a - b);
}
