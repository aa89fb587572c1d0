import type { Figure } from "#domain";
import type { AcrossFigure, SessionTrend } from "#stats";
import { laps, per100Laps, percentPoints, percents, type Unit } from "./amount.ts";
import { asSentence, counted, lower } from "./counted.ts";
import { sayLacking } from "./reason.ts";
import { sayBetween } from "./shift.ts";
import { saySigned } from "./signed.ts";
import { trendTitle } from "./trendSays.ts";

/** How a figure that compares combos is called and told. */
interface FigureWords {
  readonly name: string;
  /** At the head of its column. */
  readonly column: string;
  /** Above the chart's upright axis. */
  readonly axis: string;
  readonly meaning: string;
  readonly unit: Unit;
  readonly isHigherBetter?: true;
}

/** The figures that compare where lap times do not. */
export const acrossWords: Readonly<Record<AcrossFigure, FigureWords>> = {
  scatter: {
    name: "How much laps differ",
    column: "laps differ by",
    axis: "how much laps differ, in percent of a lap; lower is steadier",
    meaning: "from lap to lap, in percent of the usual lap; the middle one of the combo's sessions",
    unit: percents,
  },
  usualToBest: {
    name: "Usual to best",
    column: "usual to best",
    axis: "usual lap over the PB in percent, lower is closer",
    meaning: "how far the last session's usual lap lies above the PB, which more laps alone bring down",
    unit: percents,
  },
  cleanShare: {
    name: "Clean share",
    column: "clean",
    axis: "clean laps in percent, higher is better",
    meaning: "clean laps among the timed laps",
    unit: percentPoints,
    isHigherBetter: true,
  },
  mistakes: {
    name: "Mistakes",
    column: "mistakes in 100",
    axis: "mistakes in a hundred laps, lower is better",
    meaning: "offs, spins, contacts and laps without a time, in a hundred laps driven",
    unit: per100Laps,
  },
  lapsUntilOnThePace: {
    name: "Laps until within 1 % of your best",
    column: "laps until within 1 %",
    axis: "laps until within 1 % of the PB, lower is sooner",
    meaning:
      "timed laps on the combo until the first clean one within 1 % of today's PB: few where the combo was driven little",
    unit: laps,
  },
  toReference: {
    name: "To the reference",
    column: "to reference",
    axis: "PB over the reference lap in percent, lower is faster",
    meaning: "how far the PB lies from the newest reference lap",
    unit: percents,
  },
};

/**
 * A figure of one combo as it stands in a table.
 * @example sayAcross("scatter", 0.371) // "0.37 %"
 * @example sayAcross("toReference", -0.3) // "−0.30 %"
 */
export function sayAcross(figure: AcrossFigure, value: number): string {
  switch (figure) {
    case "toReference":
      return saySigned(value, percents);
    case "cleanShare":
      return `${Math.round(value)} %`;
    case "mistakes":
      return value.toFixed(1);
    case "lapsUntilOnThePace":
      return String(value);
    default:
      return value < 0 ? saySigned(value, percents) : percents.say(value);
  }
}

/**
 * What the chart of a figure finds from combo to combo.
 * @param days from the first day of the first combo to that of the last
 * @example "How much laps differ, combo by combo", where there are too few for a finding
 * @example "How much laps differ from combo to combo: lower by 0.12 % in 8 weeks, very likely at least 0.04 %"
 */
export function acrossTitle(figure: AcrossFigure, trend: Figure<SessionTrend>, days: number): string {
  const { name } = acrossWords[figure];
  if (!trend.known) return `${name}, combo by combo`;
  const title = lower(trendTitle(worseUp(figure, trend.value), { words: wordsOf(figure), days }));
  return `${name} from combo to combo: ${title}`;
}

/** What the figure is, what the finding rests on, and what it cannot tell. */
export function acrossReading(figure: AcrossFigure, trend: Figure<SessionTrend>): string {
  const { meaning, unit } = acrossWords[figure];
  const what = `${asSentence(meaning)}.`;
  if (!trend.known)
    return `${what} In the order they were first driven; whether it changes from one to the next cannot be told yet: ${sayLacking(trend.reason)}.`;
  const { perWeek, sessions } = worseUp(figure, trend.value);
  const between = sayBetween(perWeek, unit, wordsOf(figure));
  return `${what} From ${counted(sessions, "combo")}, each where it was first driven: ${between} a week. Circuits and cars differ, so an easier one moves it as well.`;
}

function wordsOf(figure: AcrossFigure) {
  const { unit, isHigherBetter } = acrossWords[figure];
  return isHigherBetter ? { fall: "higher", rise: "lower", unit } : { fall: "lower", rise: "higher", unit };
}

/** The trend with what is worse pointing up, as the words about it expect. */
function worseUp(figure: AcrossFigure, trend: SessionTrend): SessionTrend {
  if (!acrossWords[figure].isHigherBetter) return trend;
  const { finding, perWeek } = trend;
  const turned = { falling: "rising", rising: "falling", "no clear change": "no clear change" } as const;
  return {
    ...trend,
    finding: turned[finding],
    perWeek: { slope: -perWeek.slope, low: -perWeek.high, high: -perWeek.low },
  };
}
