import { readDate } from "#domain";
import { readTime } from "#entry";

/** What reads the fields of the start form that can stay empty: fetched once their part is opened. */
export const readers = { readTime, readDate };
export type Readers = typeof readers;
