export { asksOfTime, factsOf, type Hand, isOdd, questionOf } from "./asks.ts";
export type { Ask, Entry, EntryContext, EntryForm, EntryReading, Known, TypedLap } from "./context.ts";
export { exampleOf } from "./example.ts";
export { isAlike, knownFrom, measuresOf } from "./knownFrom.ts";
export { knownTimes } from "./knownTimes.ts";
export { longestNote } from "./note.ts";
export { oddInTable, type TableCombo } from "./oddInTable.ts";
export { nothingTyped, parseEntry } from "./parseEntry.ts";
export { type PasteLine, parsePaste } from "./parsePaste.ts";
export { type Choices, readChoice } from "./readChoice.ts";
export { type Measure, readMeasure, writeMeasure } from "./readMeasure.ts";
export { type ReadReferenceLap, readReferenceLap, type TypedReferenceLap } from "./readReferenceLap.ts";
export { readTime, type TimeContext } from "./readTime.ts";

export { sourceOf } from "./sourceOf.ts";
export { usualLap } from "./usualLap.ts";
export { withChoice } from "./withChoice.ts";
export type { ReadTime, TimeForm } from "./word.ts";
export { writeEntry } from "./writeEntry.ts";
