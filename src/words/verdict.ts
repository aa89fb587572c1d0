import { formatDelta, formatDifference, formatLapTime, leastForSpread } from "#domain";
import type {
  AgainstBest,
  AgainstUsual,
  ComparedRun,
  CountedRun,
  KnownTime,
  LapsOfRun,
  RacedRun,
  RunReport,
  RunVerdict,
  SteadyRun,
  TestedRun,
  UntestedRun,
  UntidyRun,
} from "#stats";
import { hundredths } from "./amount.ts";
import { asSentence, counted, inWords, listed } from "./counted.ts";
import { guestRun } from "./guest.ts";
import { sayNotCompared } from "./reason.ts";
import { sayWhyAside } from "./rigTestProgress.ts";
import type { RunFigure } from "./runFigures.ts";
import { sayRun } from "./runSays.ts";
import { sayLevel, sayUsual } from "./usualLap.ts";

/** What stands large when a run has ended. */
export interface VerdictWords {
  /** One word, or a count: "faster", "6 of 8". */
  readonly word: string;
  /** As large: what it rests on, "−0.31 s", "± 0.11 s", or what is counted, "3 of 8", "clean". */
  readonly figure: string;
  /** What the figure is of, or what else is known: "to your level, 1:24.37"; empty where word and figure say it. */
  readonly about: string;
  /** One sentence, counted from the laps and runs. */
  readonly sentence: string;
}

/**
 * The verdict of a run in words.
 * @example sayVerdict(verdict) // { word: "faster", figure: "−0.31 s", about: "to your level, 1:24.37", … }
 */
export function sayVerdict(verdict: RunVerdict): VerdictWords {
  switch (verdict.word) {
    case "counted":
      return verdict.because === "not told yet" ? saidUntested(verdict) : saidCounted(verdict);
    case "race":
      return saidRace(verdict);
    case "rig test":
      return saidTest(verdict);
    case "untidy":
      return saidUntidy(verdict);
    case "too few":
      return saidTooFew(verdict);
    case "steady":
      return saidSteady(verdict);
    default:
      return saidCompared(verdict);
  }
}

/**
 * A run that is still going on: its laps so far, and nothing that could change with the next one.
 * @example saySoFar({ laps: 6, clean: 5, … }) // { word: "5 of 6", figure: "clean", about: "so far", … }
 */
export function saySoFar(run: LapsOfRun): VerdictWords {
  return { ...sayCount(run, false), about: "so far", sentence: "" };
}

/** What stands on its own line whatever the verdict: a PB that the run brought, or a lap level with it. */
export function sayBestOfRun(report: RunReport, isBeaten: boolean): string | undefined {
  const isBest = ["first best", "new best", "level with best"].includes(report.finding.kind);
  return isBest ? sayRun(report, isBeaten) : undefined;
}

/**
 * How many laps of a run are clean.
 * @example sayCleanLaps({ laps: 8, clean: 6, … }) // "6 of 8"
 */
export function sayCleanLaps({ clean, laps }: LapsOfRun): string {
  return `${clean} of ${laps}`;
}

function sayCount(run: LapsOfRun, isWhole: boolean): Omit<VerdictWords, "sentence"> {
  if (isWhole || run.laps === 0) return { word: counted(run.driven, "lap"), figure: "driven", about: "" };
  return { word: sayCleanLaps(run), figure: "clean", about: "" };
}

function saidCounted(verdict: CountedRun): VerdictWords {
  return { ...sayCount(verdict.run, verdict.because === "partly written"), sentence: whyCounted(verdict) };
}

/** The distance is told small, for what it is worth: nothing says yet whether it is more than chance. */
function saidUntested({ run, against, missing }: UntestedRun): VerdictWords {
  return {
    ...sayCount(run, false),
    about: `${sayDistance(against)} ${toReference(against)}`,
    sentence: sayMissingRuns(missing),
  };
}

function whyCounted({ because, days = 0 }: CountedRun): string {
  switch (because) {
    case "guest":
      return guestRun;
    case "warmUp":
    case "drill":
    case "easy":
      return `${asSentence(sayNotCompared(because))}; a pace run will show the effect.`;
    case "wet":
      return `Nothing to compare these laps with: ${sayNotCompared(because)}.`;
    case "partly written":
      return "Not every lap of this run is written down, so it is not compared.";
    case "after a break":
      return `The first 20 laps after a break of ${counted(days, "day")} are not compared.`;
    case "nothing to compare with":
      return "The first laps here: there is nothing to compare them with yet.";
  }
}

function saidRace({ grid, finish, run }: RacedRun): VerdictWords {
  const sentence = "A race is not compared with practice.";
  if (grid === undefined || finish === undefined) return { ...sayCount(run, false), sentence };
  const gained = grid - finish;
  const figure = gained === 0 ? "as begun" : `${Math.abs(gained)} ${gained > 0 ? "gained" : "lost"}`;
  return { word: `${grid} to ${finish}`, figure, about: "from grid to finish", sentence };
}

/** Why it does not count stands beside the word: the laps alone would not tell. */
function saidTest({ isValid, why, run }: TestedRun): VerdictWords {
  const isShort = why?.because === "figure" && "needs" in why.reason;
  return {
    word: isValid ? "valid" : "not valid",
    figure: counted(run.pace, "clean lap"),
    about: why === undefined || isShort ? `${leastForSpread} are needed` : sayWhyAside({ why }),
    sentence: isValid
      ? "The test is judged by its pairs, not by one run."
      : "It does not count in the rig test; its laps stay.",
  };
}

function saidUntidy({ word, run }: UntidyRun): VerdictWords {
  return {
    word,
    figure: `${run.lost.length} of ${run.laps}`,
    about: "laps lost or with a mistake",
    sentence: whichLost(run),
  };
}

function saidTooFew({ word, run }: UntidyRun): VerdictWords {
  return {
    word,
    figure: `${run.pace} of ${leastForSpread}`,
    about: "clean laps that a verdict needs",
    sentence: lapsToGo(run),
  };
}

function saidSteady({ word, against, scatterMs, scatters }: SteadyRun): VerdictWords {
  const steadier = scatters.each.filter((each) => each <= scatterMs).length;
  const apart = hundredths.say(scatterMs);
  return {
    word,
    figure: `± ${apart}`,
    about: `from lap to lap; ${sayDistance(against)} ${toReference(against)}`,
    sentence: `Laps differ by about ${apart}; ${ofRuns(steadier, scatters.each.length)} as steady.`,
  };
}

function saidCompared(verdict: ComparedRun): VerdictWords {
  const { word, against } = verdict;
  return {
    word,
    figure: sayDistance(against),
    about: `${toReference(against)}, ${sayReference(against)}`,
    sentence: howSure(verdict),
  };
}

/** So many laps can be named in one sentence that is read at a glance. */
const MOST_NAMED = 5;

function whichLost({ lost, laps }: LapsOfRun): string {
  return lost.length > MOST_NAMED
    ? `${lost.length} of ${laps} laps were lost or had a mistake.`
    : `Laps ${listed(lost.map(String))} were lost or had a mistake.`;
}

function lapsToGo({ pace }: LapsOfRun): string {
  const more = leastForSpread - pace;
  return `${asSentence(inWords(more))} more clean ${more === 1 ? "lap" : "laps"} for a verdict.`;
}

/** As far as both are known: to the hundredth where a level is one of them. "−0.31 s" */
function sayDistance({ ms, decimals, referenceDecimals }: AgainstUsual): string {
  return `${formatDelta(ms, Math.min(decimals, referenceDecimals))} s`;
}

const toReference = ({ from }: AgainstUsual) =>
  from === "level" ? "to your level" : "to this session's laps before";

function sayReference({ from, referenceMs, referenceDecimals }: AgainstUsual): string {
  return from === "level" ? sayLevel(referenceMs) : sayUsual(referenceMs, referenceDecimals);
}

function howSure({ word, against: { ms }, spread: { distances } }: ComparedRun): string {
  const so = (holds: (each: number) => boolean) => ofRuns(distances.filter(holds).length, distances.length);
  if (word === "faster")
    return `Very likely more than chance: ${so((each) => each <= ms)} so far under your level.`;
  if (word === "slower")
    return `Very likely more than chance: ${so((each) => each >= ms)} so far over your level.`;
  return `May be chance: ${so((each) => Math.abs(each) >= Math.abs(ms))} as far from your level.`;
}

/** "none of your last 24 runs was", "3 of your last 24 runs were" */
function ofRuns(some: number, all: number): string {
  return `${some === 0 ? "none" : some} of your last ${all} runs ${some < 2 ? "was" : "were"}`;
}

function sayMissingRuns(reason: UntestedRun["missing"]): string {
  if (!("needs" in reason)) return "Faster or slower cannot be told yet.";
  const { needs, of, has } = reason;
  const what =
    of === "session" ? `${inWords(needs)} earlier sessions` : `${inWords(needs)} runs of earlier sessions`;
  return `Faster or slower can be told after ${what} with ${leastForSpread} clean laps: ${has === 0 ? "none" : has} so far.`;
}

/**
 * The verdict as it is read out once.
 * @example "Run 3: faster, −0.31 s to your level, 1:24.37. Very likely more than chance: …"
 */
export function sayVerdictAloud(number: number, { word, figure, about, sentence }: VerdictWords): string {
  return `Run ${number}: ${word}, ${[figure, about].filter(Boolean).join(" ")}. ${sentence}`;
}

/**
 * Usual and best lap of a run, the way to the PB, and how many of its laps are clean where the verdict's own word is not
 * that: smaller, under the verdict.
 */
export function sayVerdictFigures(report: RunReport, verdict?: RunVerdict): readonly RunFigure[] {
  const { usual, usualDecimals, best, againstBest } = report;
  const all: (RunFigure | undefined)[] = [
    usual.known ? figureOf("usual", sayUsual(usual.value, usualDecimals)) : undefined,
    best.known ? figureOf("best", formatLapTime(best.value.ms, best.value.decimals)) : undefined,
    best.known && againstBest.known ? figureOf("to PB", toBest(best.value, againstBest.value)) : undefined,
    verdict === undefined || isCounted(verdict) ? undefined : figureOf("clean", sayCleanLaps(verdict.run)),
  ];
  return all.filter((figure) => figure !== undefined);
}

/** Its word is the count, or there is nothing to count. */
const isCounted = (verdict: RunVerdict) => verdict.run.laps === 0 || sayVerdict(verdict).figure === "clean";

const figureOf = (label: string, value: string): RunFigure => ({ label, value, detail: undefined });

function toBest(best: KnownTime, { pbMs, pbDecimals }: AgainstBest): string {
  return formatDifference({ ms: pbMs, decimals: pbDecimals }, best);
}
