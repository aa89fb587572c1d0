export type { Ask, Entry, EntryContext, EntryForm, EntryReading, TypedLap } from "./context.ts";
export { longestNote } from "./note.ts";
export { nothingTyped, parseEntry } from "./parseEntry.ts";
export { type PasteLine, parsePaste } from "./parsePaste.ts";
export { type Measure, readMeasure, writeMeasure } from "./readMeasure.ts";
export { readTime, type TimeContext } from "./readTime.ts";
export { sourceOf } from "./sourceOf.ts";
export type { ReadTime, TimeForm } from "./word.ts";
export { writeEntry } from "./writeEntry.ts";
