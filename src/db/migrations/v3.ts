import type { Migration } from "./migration.ts";

/**
 * The third schema. `changeMarks` and `keptAnswers` are derived: never backed up, never merged. Each has its key in `id`,
 * because an older version reads tables it does not know by that.
 */
export const v3: Migration = {
  version: 3,
  indexes: { changeMarks: "id", keptAnswers: "id" },
  rows: {},
};
