import type { Book } from "./book.ts";
import { type ComboKey, comboKeys, combos, settingEffects } from "./combos.ts";
import type { DrivenEvening } from "./driveEvening.ts";
import { pageOfEvening } from "./driveSeason.ts";
import { driverOfPage, trueMedian } from "./levels.ts";
import { type Meant, meanings, noLaps } from "./meant.ts";
import { middle, plainBest } from "./plainReading.ts";
import { rigOn, shareOfRig } from "./rigs.ts";
import { firstDay, lastDay, seeds, zone } from "./season.ts";
import { type CornerTruth, cornerTruthOf, type ReviewedCombo } from "./trueCorners.ts";

/** What the generator knows about the present page of a combo. */
export interface ComboFacts {
  readonly comboId: string;
  readonly name: string;
  readonly shape: "improving" | "flat" | "sparse" | "light";
  readonly sessions: number;
  readonly laps: Meant & { readonly driven: number };
  readonly guestLaps: number;
  readonly best: { readonly lapId: string; readonly ms: number };
  /** Law of practice of the session median with the rig of the last day, ms and laps. */
  readonly practice: {
    readonly floorMs: number;
    readonly spanMs: number;
    readonly halfLifeLaps: number | null;
  };
  /** True session medians: practice, break and rig, without the form of the evening. */
  readonly medianAtStartMs: number;
  readonly medianAtEndMs: number;
  readonly gainMs: number;
  /** Middle of the slopes between any two sessions' true medians that have 5 pace laps, ms a week. */
  readonly gainPerWeekMs: number;
  readonly medians: readonly { readonly date: string; readonly lapsBefore: number; readonly ms: number }[];
}

/** The truth about the demo logbook. */
export interface Truth {
  readonly about: string;
  readonly firstDay: string;
  readonly lastDay: string;
  readonly zone: string;
  readonly seeds: typeof seeds;
  readonly combos: Readonly<Record<ComboKey, ComboFacts>>;
  readonly settings: Readonly<Record<"gain" | "view", SettingFacts>>;
  /** What became of the corners from one review to the next, four weeks later: metres truly unused, ms a lap. */
  readonly corners: Readonly<Record<ReviewedCombo, CornerTruth>>;
}

/** What a changed setting did on each combo: ms, the same on every lap. */
export interface SettingFacts {
  readonly from: string;
  readonly rigBefore: string;
  readonly rigAfter: string;
  readonly effectMs: Readonly<Record<ComboKey, number>>;
}

/** Writes down what is true of a book. */
export function truthOf(book: Book): Truth {
  const { asItWas, lowerGain, trueView } = book.rigs;
  const effects = (of: (car: string) => number) =>
    everyCombo((key) => Math.round(of(combos[key].car) * driverOfPage(combos[key], 0).baseMs));
  const { gain, view } = settingEffects;
  return {
    about: "What the generator of the demo logbook made true. Written by npm run demo, never by hand.",
    firstDay,
    lastDay,
    zone,
    seeds,
    combos: everyCombo((key) => factsOf(book, key)),
    settings: {
      gain: {
        from: gain.from,
        rigBefore: asItWas.id,
        rigAfter: lowerGain.id,
        effectMs: effects((car) => (car === gain.car ? gain.share : 0)),
      },
      view: {
        from: view.from,
        rigBefore: lowerGain.id,
        rigAfter: trueView.id,
        effectMs: effects(() => view.share),
      },
    },
    corners: { ringHatch: cornerTruthOf("ringHatch"), moorSingle: cornerTruthOf("moorSingle") },
  };
}

function everyCombo<T>(of: (key: ComboKey) => T): Readonly<Record<ComboKey, T>> {
  return Object.fromEntries(comboKeys.map((key) => [key, of(key)])) as Record<ComboKey, T>;
}

function factsOf({ season, names, rigs }: Book, key: ComboKey): ComboFacts {
  const combo = combos[key];
  const page = pageOfEvening(key, lastDay);
  const present = season.filter(
    ({ evening }) => evening.combo === key && pageOfEvening(key, evening.date) === page,
  );
  const [first, last] = [present[0], present.at(-1)];
  const best = plainBest(present.flatMap(({ runs }) => runs));
  if (first === undefined || last === undefined || best === undefined)
    throw new RangeError(`no session or no clean lap on the present page of ${key}`);
  const driver = driverOfPage(combo, page);
  const span = driver.baseMs * driver.span;
  const floor = trueMedian(
    driver,
    Number.POSITIVE_INFINITY,
    shareOfRig(rigs, rigOn(rigs, lastDay), combo.car),
  );
  return {
    comboId: names.comboIds[key],
    name: `${combo.track} · ${combo.car}`,
    shape: combo.shape,
    sessions: present.length,
    laps: lapsOf(present),
    guestLaps: present.reduce((sum, { guestLaps }) => sum + guestLaps, 0),
    best,
    practice: {
      floorMs: Math.round(floor),
      spanMs: Math.round(span),
      halfLifeLaps: driver.kind === "flat" ? null : driver.paceOfLearning,
    },
    medianAtStartMs: first.trueMedianMs,
    medianAtEndMs: last.trueMedianMs,
    gainMs: last.trueMedianMs - first.trueMedianMs,
    gainPerWeekMs: slopePerWeek(present.filter(({ meant }) => meant.pace >= 5)),
    medians: present.map(({ evening: { date }, lapsBefore, trueMedianMs: ms }) => ({ date, lapsBefore, ms })),
  };
}

function lapsOf(present: readonly DrivenEvening[]): ComboFacts["laps"] {
  const sum = noLaps();
  for (const { meant } of present) for (const meaning of meanings) sum[meaning] += meant[meaning];
  return { ...sum, driven: meanings.reduce((total, meaning) => total + sum[meaning], 0) };
}

const weekMs = 7 * 86_400_000;

function slopePerWeek(present: readonly DrivenEvening[]): number {
  const slopes = present.flatMap((one, index) =>
    present.slice(index + 1).map((other) => {
      const weeks = (other.session.startedAt - one.session.startedAt) / weekMs;
      return (other.trueMedianMs - one.trueMedianMs) / weeks;
    }),
  );
  return Math.round(middle(slopes) ?? 0);
}
