import type { Drill, DrillCount, Id } from "#domain";
import { LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

/** One drill in a run: what is counted, and where. */
export interface CountedDrill {
  readonly runId: Id;
  readonly drill: Drill;
  /** Absent where the drill is of the whole lap. */
  readonly corner?: number | undefined;
}

/** Counts one more try of a drill. */
export function countTry(
  book: Logbook,
  { isGood, ...counted }: CountedDrill & { readonly isGood: boolean },
): Promise<Change> {
  return change(book, counted, ({ tries, good }) => ({ tries: tries + 1, good: good + Number(isGood) }));
}

/** Stores how many tries of a drill there were and how many worked, as typed; no tries take the count away. */
export function setCount(
  book: Logbook,
  { tries, good, ...counted }: CountedDrill & { readonly tries: number; readonly good: number },
): Promise<Change> {
  return change(book, counted, () => {
    if (good <= tries) return { tries, good };
    throw new LedgerFault("invalid", `Not counted: ${good} of ${tries} is more than were tried.`);
  });
}

function change(
  book: Logbook,
  { runId, drill, corner }: CountedDrill,
  next: (before: Pick<DrillCount, "tries" | "good">) => Pick<DrillCount, "tries" | "good">,
): Promise<Change> {
  return write(book, "Not counted", async (writer) => {
    const { counts = [] } = await writer.get("runs", runId);
    const isSame = (count: DrillCount) => count.drill === drill && count.corner === corner;
    const { tries, good } = next(counts.find(isSame) ?? { tries: 0, good: 0 });
    const others = counts.filter((count) => !isSame(count));
    const own: DrillCount = { drill, tries, good, ...(corner !== undefined && { corner }) };
    const all = tries === 0 ? others : [...others, own];
    await writer.patch("runs", runId, { counts: all.length === 0 ? undefined : all });
    return changeOf(writer, `${good} of ${tries} counted`);
  });
}
