import type { Migration } from "./migration.ts";

/** The first schema. `digests` is derived: never backed up, never merged; `openSince` stands while a session is open. */
export const v1: Migration = {
  version: 1,
  indexes: {
    preferences: "id, updatedAt",
    cars: "id, updatedAt",
    tracks: "id, updatedAt",
    layouts: "id, trackId, updatedAt",
    combos: "id, carId, layoutId, updatedAt",
    pages: "id, [comboId+from], updatedAt",
    references: "id, comboId, updatedAt",
    sessions: "id, [comboId+startedAt], startedAt, deletedAt, updatedAt",
    runs: "id, [sessionId+n], [comboId+startedAt], deletedAt, updatedAt",
    rigs: "id, from, updatedAt",
    targets: "id, comboId, updatedAt",
    forecasts: "id, comboId, targetId, updatedAt",
    rigTests: "id, comboId, updatedAt",
    cornerReviews: "id, [comboId+on], updatedAt",
    digests:
      "sessionId, [comboId+startedAt], [comboId+changedAt], [comboId+bestKey], [comboId+staleSince], openSince",
  },
  rows: {},
};
