import * as v from "valibot";
import {
  type CalendarDate,
  firstDate,
  isCalendarDate,
  lapRange,
  lastDate,
  longestName,
  longestText,
  type Range,
} from "#domain";

const day = 86_400_000;
/** Noon of the first and of the last date lies within a day of them in every zone. */
const earliest = Date.parse(firstDate) - day;
const latest = Date.parse(lastDate) + 2 * day;

/** A number from a range, both ends counted. */
export const within = ({ least, most }: Range) => v.pipe(finite, v.minValue(least), v.maxValue(most));
const whole = (range: Range) => v.pipe(within(range), v.integer());

export const finite = v.pipe(v.number(), v.finite());
/** Epoch milliseconds, in the years a date may name. */
export const instant = whole({ least: earliest, most: latest });
/** A stamp of a row: an instant since 1970. */
export const stamp = whole({ least: 0, most: latest });
/** A lap time, ms. */
export const time = whole(lapRange);
/** A sector time: a part of a lap. */
export const partOfLap = whole({ least: 1, most: lapRange.most });
/** Place of a run or a lap among others; between two places there is always another. */
export const place = within({ least: -1e6, most: 1e6 });
export const count = (range: Range = { least: 0, most: 1_000_000 }) => whole(range);
export const name = v.pipe(v.string(), v.maxLength(longestName));
export const note = v.pipe(v.string(), v.maxLength(longestText));
export const decimals = whole({ least: 0, most: 3 });
/** A UUID in lower case. A driver's own files only hold version 7; other versions do no harm. */
export const id = v.pipe(v.string(), v.regex(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/, "not an id"));

/** A day of the calendar that a row may name. */
export const date = v.pipe(
  v.string(),
  v.regex(/^\d{4}-\d\d-\d\d$/, "not a date like 2026-10-14"),
  v.check((text: CalendarDate) => isCalendarDate(text), "no such day"),
  v.check((text) => text >= firstDate && text <= lastDate, `not from ${firstDate} to ${lastDate}`),
);
/**
 * The shape of an IANA name of a time zone, or of a fixed distance from UTC. Whether this browser knows it is no matter:
 * one that it does not know is told in UTC.
 */
export const zone = v.pipe(
  v.string(),
  v.regex(/^([A-Za-z][\w+\-/]{1,63}|[+-]\d\d:?\d\d)$/, "not the name of a time zone"),
);

export const stamped = {
  id,
  createdAt: stamp,
  updatedAt: stamp,
  deletedAt: v.exactOptional(stamp),
};
