import { fitLines, minutesOfThree, planLaps, type Room } from "./fitLines.ts";
import { hasFailedTwice } from "./hasFailedTwice.ts";
import { learnTheLayout } from "./learnTheLayout.ts";
import type { PlanFacts } from "./planFacts.ts";
import { type DraftLine, isNewCircuit, type Rule, rules } from "./planRules.ts";
import { suggestionIn } from "./suggestionIn.ts";

/** A session written out, run by run. */
export interface PlanDraft {
  readonly lines: readonly DraftLine[];
  /** Index of the line that is the one suggestion. */
  readonly first: number;
  /** What it was fitted to: laps at most, and minutes. */
  readonly room: Room;
  /** There are minutes for more, but not laps. */
  readonly isShortOfLaps: boolean;
}

/** An evening nobody knows yet. Our own choice. */
const FIRST_EVENING = { laps: 20, minutes: 60 };
/** No plan asks for more than the usual laps by half. */
const MORE = 1.5;
const MOST_FOCUSES = 2;

/**
 * The next session as three to five runs, by the table of rules: an opening; the next run of a rig test, or what went well last
 * time once more; what costs most, and what costs next; a drill; a run that shows the effect; a long run where races are driven.
 * What did not work twice in a form is not proposed in it again. The same figures give the same draft.
 * @param facts of the combo's last evenings
 * @param minutes the driver has; without it those of the usual evening
 */
export function draftPlan(facts: PlanFacts, minutes?: number): PlanDraft {
  const { evening } = facts;
  const laps = Math.max(1, Math.floor((evening?.laps ?? FIRST_EVENING.laps) * MORE));
  const lapMs = evening?.lapMs;
  const room = { laps, minutes: minutes ?? usualMinutes({ laps, lapMs }, evening), lapMs };
  const lines = linesIn(facts, room);
  const longer = linesIn(facts, { ...room, laps: Number.POSITIVE_INFINITY });
  return { lines, first: suggestionIn(lines), room, isShortOfLaps: planLaps(longer) > planLaps(lines) };
}

/** Those of the usual evening; up to half as many again where it needs them for three short runs, as with its laps. */
function usualMinutes(room: Pick<Room, "laps" | "lapMs">, evening: PlanFacts["evening"]): number {
  const usual = evening?.minutes ?? FIRST_EVENING.minutes;
  const three = minutesOfThree(room);
  return three === undefined || three > usual * MORE ? usual : Math.max(usual, three);
}

const linesIn = (facts: PlanFacts, room: Room) =>
  isNewCircuit(facts) ? fitLines(learnTheLayout(facts), room) : fittedLines(facts, room);

/** Lines as they fit, none of them in a form that has failed twice: shortened, a long run is the short one that failed. */
function fittedLines(facts: PlanFacts, room: Room): readonly DraftLine[] {
  const out: DraftLine[] = [];
  for (;;) {
    const wanted = linesFor(facts, out);
    const lines = fitLines(wanted, room);
    const failed = lines.find((line) => hasFailedTwice(line, facts.tried));
    const form = failed && wanted.find(({ rule }) => rule === failed.rule);
    if (form === undefined) return lines;
    out.push(form);
  }
}

/**
 * The line of a rule that has not failed in its form; undefined where the rule does not speak, or no form is left.
 * @param out forms that would fail once they are shortened
 */
function lineOf({ lines }: Rule, facts: PlanFacts, out: readonly DraftLine[]): DraftLine | undefined {
  const isOut = (line: DraftLine) =>
    out.some(({ rule, laps, drill }) => rule === line.rule && laps === line.laps && drill === line.drill);
  return lines(facts).find((line) => !hasFailedTwice(line, facts.tried) && !isOut(line));
}

function linesFor(facts: PlanFacts, out: readonly DraftLine[]): readonly DraftLine[] {
  const of = (part: Rule["part"]) => rules.filter((rule) => rule.part === part);
  const one = (part: Rule["part"]) => {
    const [line] = of(part).flatMap((rule) => lineOf(rule, facts, out) ?? []);
    return line === undefined ? [] : [line];
  };
  const focuses = of("focus")
    .map((rule) => ({ rule, worth: rule.worth?.(facts) ?? 0 }))
    .filter(({ worth }) => worth > 0)
    .toSorted((a, b) => b.worth - a.worth)
    .flatMap(({ rule }) => lineOf(rule, facts, out) ?? [])
    .slice(0, MOST_FOCUSES);
  return [
    ...one("opening"),
    ...one("first"),
    ...focuses,
    ...one("drill").filter((drill) => focuses.every(({ rule }) => rule !== drill.rule)),
    ...one("close"),
    ...one("last"),
  ];
}
