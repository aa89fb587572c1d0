import * as v from "valibot";

/** Farthest instant a Date can hold. */
const farthest = 8.64e15;
const longestTime = 99 * 3_600_000;
const longestNote = 20_000;
const longestName = 400;

/** Epoch milliseconds. */
export const instant = v.pipe(v.number(), v.integer(), v.minValue(-farthest), v.maxValue(farthest));
/** A stamp of a row: an instant since 1970. */
export const stamp = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(farthest));
/** A lap or sector time, 1 ms to 99 hours. */
export const time = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(longestTime));
export const count = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1_000_000));
export const finite = v.pipe(v.number(), v.finite());
/** A length, torque or other figure that is never below zero. */
export const measure = v.pipe(finite, v.minValue(0), v.maxValue(1e9));
export const name = v.pipe(v.string(), v.maxLength(longestName));
export const note = v.pipe(v.string(), v.maxLength(longestNote));
export const decimals = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(3));
/** A UUID in lower case. A driver's own files only hold version 7; other versions do no harm. */
export const id = v.pipe(v.string(), v.regex(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/, "not an id"));

/** A day of the calendar from 1900 to 2199. */
export const date = v.pipe(
  v.string(),
  v.regex(/^(19|20|21)\d\d-\d\d-\d\d$/, "not a date like 2026-10-14"),
  v.check((text) => {
    const [year = 0, month = 0, day = 0] = text.split("-").map(Number);
    const back = new Date(Date.UTC(year, month - 1, day));
    return back.getUTCMonth() === month - 1 && back.getUTCDate() === day;
  }, "no such day"),
);
/** The shape of an IANA name of a time zone. */
export const zone = v.pipe(v.string(), v.regex(/^[A-Za-z][\w+\-/]{1,60}$/, "not the name of a time zone"));

const stamps = v.pipe(v.array(stamp), v.maxLength(1000));
export const stamped = {
  id,
  createdAt: stamp,
  updatedAt: stamp,
  deletedAt: v.exactOptional(stamp),
  had: v.exactOptional(stamps),
  disproved: v.exactOptional(stamps),
};
