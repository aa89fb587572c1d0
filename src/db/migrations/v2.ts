import type { Migration } from "./migration.ts";

/**
 * The second schema. Rows and laps remember the stamps they `had`, so an app that does not know these must not merge
 * them; `aside` holds rows that could not be brought to a newer schema, as they were.
 */
export const v2: Migration = {
  version: 2,
  indexes: { aside: "id" },
  rows: {},
};
