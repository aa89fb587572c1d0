import type { Id, PlannedRun } from "#domain";
import { sayGoodWhen } from "#words";

/** A line as the story has it: its id is drawn, and when it is good is told as the app tells it. */
export type LineOfStory = Omit<PlannedRun, "id" | "goodWhen">;

/** The lines of a plan as a session or a template holds them. */
export function tellLines(lines: readonly LineOfStory[], newId: () => Id): PlannedRun[] {
  return lines.map((line) => ({
    id: newId(),
    ...line,
    ...(line.check && { goodWhen: sayGoodWhen({ ...line, check: line.check }) }),
  }));
}
