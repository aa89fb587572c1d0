import type { Corner, Id, PlanCheck, PlannedRun } from "#domain";
import { checkAsTold, type PlanFacts } from "#stats";
import { sayDrill, sayGoodWhen } from "./planLine.ts";

/** The runs of a plan as a template keeps them: without the figures of that day, and without the run of a rig test. */
export function templateOf(lines: readonly PlannedRun[]): readonly PlannedRun[] {
  return lines
    .filter(({ rigTest }) => rigTest === undefined)
    .map(({ id: _id, reason: _reason, skipped: _skipped, ...line }) => line);
}

/** What a template is taken for: the combo's figures now, and the corners of its layout. */
interface Taking {
  readonly facts: Pick<PlanFacts, "usual" | "scatter" | "sector">;
  readonly corners: readonly Corner[];
  /** Whether the template was kept on that layout: elsewhere its corners and sectors are other ones. */
  readonly isSameLayout: boolean;
  readonly newId: () => Id;
}

/**
 * The runs of a template as they are driven with a combo: what a run is judged by is asked anew of this combo's figures, and left
 * out where it has none; so are corners and sectors of another layout, with what names them.
 */
export function linesOfTemplate(
  lines: readonly PlannedRun[],
  { facts, corners, isSameLayout, newId }: Taking,
): readonly PlannedRun[] {
  return lines.map((line) => {
    const { check, goodWhen, ...about } = isThere(line, corners, isSameLayout) ? line : withoutPlace(line);
    const now = check && checkNow(check, about, facts);
    const said = now ? sayGoodWhen({ ...about, check: now }) : check === undefined ? goodWhen : undefined;
    return {
      ...about,
      id: newId(),
      ...(now && { check: now }),
      ...(said !== undefined && { goodWhen: said }),
    };
  });
}

/** Whether a run is about no place of the layout it was kept on, or about one that is here too. */
function isThere(
  { corner, sector, attendTo = "" }: PlannedRun,
  corners: readonly Corner[],
  isSameLayout: boolean,
): boolean {
  if (!isSameLayout) return corner === undefined && sector === undefined && !attendTo.includes("corner ");
  return corner === undefined || corners.length === 0 || corners.some(({ number }) => number === corner);
}

/** A run without its corner and sector, and without the words of ours that name them. */
function withoutPlace({ corner: _corner, sector: _sector, attendTo, ...line }: PlannedRun): PlannedRun {
  const isPlace = attendTo === undefined || attendTo.includes("corner ") || attendTo.includes("sector ");
  return {
    ...line,
    purpose: line.rule === undefined ? line.purpose : purposeWithoutPlace(line),
    ...(!isPlace && { attendTo }),
  };
}

function purposeWithoutPlace({ rule, drill, purpose }: PlannedRun): string {
  if (drill !== undefined) return sayDrill(drill, undefined);
  if (rule === "mistakes") return "Clean laps";
  if (rule === "pace") return "Faster laps";
  return rule === "corner" || rule === "again" ? "One corner" : purpose;
}

function checkNow(
  check: PlanCheck,
  { corner, sector }: Pick<PlannedRun, "corner" | "sector">,
  facts: Taking["facts"],
): PlanCheck | undefined {
  const { figure } = check;
  const at = (value: number | undefined) => (value === undefined ? undefined : checkAsTold(figure, value));
  switch (figure) {
    case "usual":
      return at(facts.usual);
    case "scatter":
      return at(facts.scatter);
    case "sector":
      return at(facts.sector?.sector === sector ? facts.sector?.usual : undefined);
    case "corner":
      return corner === undefined ? undefined : check;
    // A best lap was wanted of that combo, by that day.
    case "best":
      return undefined;
    default:
      return check;
  }
}
