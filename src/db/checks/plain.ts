import * as v from "valibot";
import {
  type CalendarDate,
  firstDate,
  instantRange,
  isCalendarDate,
  lapRange,
  lastDate,
  longestName,
  longestText,
  type Range,
  zoneForm,
} from "#domain";

/** A number from a range, both ends counted. */
export const within = ({ least, most }: Range) =>
  v.pipe(v.number(), v.finite(), v.minValue(least), v.maxValue(most));
const whole = ({ least, most }: Range) =>
  v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));

export const finite = v.pipe(v.number(), v.finite());
/** Epoch milliseconds, in the years a date may name. */
export const instant = whole(instantRange);
/** A stamp of a row: an instant since 1970. */
export const stamp = whole({ least: 0, most: instantRange.most });
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
export const zone = v.pipe(v.string(), v.regex(zoneForm, "not the name of a time zone"));

const stamps = v.pipe(v.array(stamp), v.maxLength(1000));
export const stamped = {
  id,
  createdAt: stamp,
  updatedAt: stamp,
  deletedAt: v.exactOptional(stamp),
  had: v.exactOptional(stamps),
  disproved: v.exactOptional(stamps),
};
