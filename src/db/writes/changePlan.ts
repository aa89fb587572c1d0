import { type Id, lineText, type PlannedRun, placeOfLine } from "#domain";
import type { Logbook } from "../logbook.ts";
import { isSame } from "../patch.ts";
import { planToCome } from "../reads/waitingPlan.ts";
import type { Change } from "./change.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

/** The plan of a combo's next session as the driver saw it: the one that is stored, or a draft that is not yet. */
export interface SeenPlan {
  readonly comboId: Id;
  readonly lines: readonly PlannedRun[];
  /** Minutes that are kept with a draft when it is stored. */
  readonly minutes: number | undefined;
}

interface Changed {
  readonly lines: readonly PlannedRun[];
  readonly what: string;
  /** A line had been changed elsewhere since it was seen. */
  readonly isOverwritten?: boolean;
}

/**
 * Changes the lines that are stored, not those that were seen, so that a plan changed in two tabs keeps what was done in either. A
 * draft is stored with its first change.
 */
function change(
  book: Logbook,
  { comboId, lines: seen, minutes }: SeenPlan,
  work: (lines: readonly PlannedRun[]) => Changed,
): Promise<Change> {
  return write(book, "Plan not changed", async (writer) => {
    const { row, own } = await planToCome(book, comboId);
    const before = own?.lines ?? seen;
    const { lines, what, isOverwritten = false } = work(before);
    if (isSame(lines, before)) return { what, edits: [] };
    if (row === undefined)
      await writer.add("plans", { comboId, lines, ...(minutes !== undefined && { minutes }) });
    else await writer.patch("plans", row.id, { lines });
    return changeOf(writer, what, isOverwritten ? ["lines"] : []);
  });
}

/**
 * Puts a line into the plan: in the place of the one that was seen when its change began, or at the end, also where that one is no
 * longer there.
 */
export function putLine(
  book: Logbook,
  plan: SeenPlan,
  { line, seen }: { readonly line: PlannedRun; readonly seen?: PlannedRun | undefined },
): Promise<Change> {
  return change(book, plan, (lines) => {
    const at = placeOfLine(lines, seen ?? line);
    const there = lines[at];
    if (there === undefined) return { lines: [...lines, line], what: "Run added to the plan" };
    const { id } = there;
    return {
      lines: lines.with(at, { ...line, ...(id !== undefined && { id }) }),
      what: "Run of the plan changed",
      isOverwritten: seen !== undefined && lineText(seen) !== lineText(there),
    };
  });
}

/** Moves a line one place up (−1) or down (+1), as far as there is one. */
export function moveLine(
  book: Logbook,
  plan: SeenPlan,
  { line, by }: { readonly line: PlannedRun; readonly by: -1 | 1 },
): Promise<Change> {
  return change(book, plan, (lines) => {
    const at = placeOfLine(lines, line);
    const [mine, other] = [lines[at], lines[at + by]];
    if (mine === undefined || other === undefined) return { lines, what: "Run not moved" };
    const what = `Run moved to place ${at + by + 1} of ${lines.length}`;
    return { lines: lines.with(at, other).with(at + by, mine), what };
  });
}

/** Takes a line out of the plan. With the last one goes the plan, and the draft is there again. */
export function removeLine(book: Logbook, plan: SeenPlan, line: PlannedRun): Promise<Change> {
  return change(book, plan, (lines) => {
    const at = placeOfLine(lines, line);
    const there = lines[at];
    const left = at < 0 ? lines : lines.toSpliced(at, 1);
    return {
      lines: left,
      what: left.length === 0 ? "The last run is out: the draft stands again" : "Run taken out of the plan",
      isOverwritten: there !== undefined && lineText(there) !== lineText(line),
    };
  });
}

/**
 * Takes the runs of a template in place of those of the plan.
 * @param seen the plan's lines; where they have been changed elsewhere meanwhile, that is said
 */
export function takeTemplate(
  book: Logbook,
  plan: SeenPlan,
  { name, lines }: { readonly name: string; readonly lines: readonly PlannedRun[] },
): Promise<Change> {
  return change(book, plan, (before) => ({
    lines,
    what: `Template “${name}” taken`,
    isOverwritten: !isSame(before.map(lineText), plan.lines.map(lineText)),
  }));
}

/** Puts the driver's plan away, so that the draft is there again; the minutes stay. */
export function draftAnew(book: Logbook, plan: SeenPlan): Promise<Change> {
  return write(book, "Plan not changed", async (writer) => {
    const { row } = await planToCome(book, plan.comboId);
    if (row !== undefined) await writer.patch("plans", row.id, { lines: [] });
    const isOverwritten = row !== undefined && !isSame(row.lines.map(lineText), plan.lines.map(lineText));
    return changeOf(writer, "Plan drafted anew", isOverwritten ? ["lines"] : []);
  });
}

/** Says how many minutes there are for the next session with a combo; undefined goes back to the usual evening. */
export function setPlanMinutes(
  book: Logbook,
  { comboId, minutes }: { readonly comboId: Id; readonly minutes: number | undefined },
): Promise<Change> {
  return write(book, "Minutes not stored", async (writer) => {
    const { row } = await planToCome(book, comboId);
    if (row !== undefined) await writer.patch("plans", row.id, { minutes });
    else await writer.add("plans", { comboId, lines: [], ...(minutes !== undefined && { minutes }) });
    return changeOf(writer, "Minutes changed");
  });
}
