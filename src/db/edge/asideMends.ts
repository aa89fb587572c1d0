import { isCount, isObject, isText } from "./kinds.ts";
import type { Mends } from "./mendReads.ts";

/** What is drawn of a row set aside, so that the page on which it is mended stands whatever the browser holds. */
export const asideMends: Mends = {
  aside: {
    table: [isText, () => "nowhere"],
    schema: [isCount, () => 1],
    why: [isText, () => ""],
    row: [(value) => value === undefined || isObject(value), (value) => ({ value })],
  },
};
