import type { Dexie } from "dexie";
import type { Migration, OldRow } from "./migration.ts";
import { migrations } from "./migrations.ts";

/** Tells Dexie every schema, and to run the row functions of each step on opening an older logbook. */
export function declareSchemas(database: Dexie, steps: readonly Migration[] = migrations): void {
  for (const step of steps) {
    const version = database.version(step.version).stores({ ...step.indexes });
    const changes = Object.entries(step.rows);
    if (changes.length === 0) continue;
    version.upgrade(async (transaction) => {
      for (const [table, change] of changes)
        await transaction
          .table<OldRow>(table)
          .toCollection()
          .modify((row, place) => {
            const next = change(row);
            if (next === undefined) Reflect.deleteProperty(place, "value");
            else place.value = next;
          });
    });
  }
}
