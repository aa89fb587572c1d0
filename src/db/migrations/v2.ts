import type { Migration } from "./migration.ts";

/**
 * The second schema. Rows and laps may carry an `era` (absent: 0), so an app that does not know it must not merge them;
 * `aside` holds rows that could not be brought to a newer schema, as they were.
 */
export const v2: Migration = {
  version: 2,
  indexes: { aside: "id" },
  rows: {},
};
