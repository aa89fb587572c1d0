import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build, type Plugin } from "vite";

/** The made-up next schema: it changes every car, fails at every car, fails as a whole, or throws when it is imported. */
const made = {
  works: { cars: "id, name, updatedAt", change: "({ ...row, wheels: 4 })", begin: "" },
  failsAtRows: {
    cars: "id, name, updatedAt",
    change: '(() => { throw new Error("this step fails on purpose"); })()',
    begin: "",
  },
  // No database can change what a table's rows are found by.
  failsAsAWhole: { cars: "name, updatedAt", change: "row", begin: "" },
  failsAtImport: {
    cars: "id, updatedAt",
    change: "row",
    begin: 'if (globalThis.indexedDB) throw new Error("this code fails on purpose");',
  },
} as const;

/**
 * Builds the app once more as a later version with a next schema would be: an index more, a table more, every car
 * changed. Gives the folder of the build.
 */
export async function buildWithNextSchema(step: keyof typeof made): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "lap-ledger-schema-"));
  await build({
    logLevel: "error",
    build: { outDir: folder, emptyOutDir: true },
    plugins: [nextSchema(step)],
  });
  return folder;
}

const nextSchema = (step: keyof typeof made): Plugin => ({
  name: "next-schema",
  enforce: "pre",
  load: (id) =>
    id.endsWith("/src/db/migrations/migrations.ts")
      ? `${made[step].begin}
         import { v1 } from "./v1.ts";
         import { v2 } from "./v2.ts";
         import { v3 } from "./v3.ts";
         import { v4 } from "./v4.ts";
         const v5 = {
           version: 5,
           indexes: { cars: "${made[step].cars}", tyreSets: "id, updatedAt" },
           rows: { cars: (row) => ${made[step].change} },
         };
         export const migrations = [v1, v2, v3, v4, v5];
         export const lowestSchema = 1;
         export const newestSchema = 5;`
      : undefined,
});
