import type { DBCore, DBCoreTable, Dexie } from "dexie";

/**
 * Lays something over each table of a database, beneath all that Dexie itself lays there, so that live queries and writes see
 * what it hands on.
 * @param name told apart from other layers by it
 * @param level the lower, the nearer to the browser's database; Dexie's own begin at 0, but for one at −1
 * @param over the table as it is seen from above
 */
export function overTables(
  database: Dexie,
  name: string,
  level: number,
  over: (table: DBCoreTable, tableName: string) => DBCoreTable,
): void {
  database.use({
    stack: "dbcore",
    name,
    level,
    create: (core): Partial<DBCore> => ({ table: (tableName) => over(core.table(tableName), tableName) }),
  });
}
