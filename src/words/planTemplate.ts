import type { Corner, Id, PlanCheck, PlannedRun } from "#domain";
import { checkAsTold, type PlanFacts } from "#stats";
import { sayGoodWhen } from "./planLine.ts";

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
  readonly newId: () => Id;
}

/**
 * The runs of a template as they are driven with a combo: what a run is judged by is asked anew of this combo's figures, and left
 * out where it has none; so is a corner that its layout has not.
 */
export function linesOfTemplate(
  lines: readonly PlannedRun[],
  { facts, corners, newId }: Taking,
): readonly PlannedRun[] {
  return lines.map(({ check, goodWhen, corner: at, ...line }) => {
    const isThere = at === undefined || corners.length === 0 || corners.some(({ number }) => number === at);
    const corner = isThere ? at : undefined;
    const about = { ...line, ...(corner !== undefined && { corner }) };
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
