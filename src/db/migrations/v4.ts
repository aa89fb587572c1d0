import type { Migration } from "./migration.ts";

/** The fourth schema: plans of sessions to come, and templates. */
export const v4: Migration = {
  version: 4,
  indexes: { plans: "id, comboId, updatedAt" },
  rows: {},
};
