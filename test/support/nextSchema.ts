import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "vite";

/** What the made-up third schema does to a car: adds a field, or fails half way through the rows. */
const change = {
  works: "(row) => ({ ...row, wheels: 4 })",
  fails: '() => { throw new Error("this step fails on purpose"); }',
} as const;

/**
 * Builds the app once more as a later version with a third schema would be: an index more, a table more, every car
 * changed. Gives the folder of the build.
 */
export async function buildWithNextSchema(step: keyof typeof change): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "lap-ledger-schema-"));
  await build({
    logLevel: "error",
    build: { outDir: folder, emptyOutDir: true },
    plugins: [
      {
        name: "next-schema",
        enforce: "pre",
        load: (id) =>
          id.endsWith("/src/db/migrations/migrations.ts")
            ? `import { v1 } from "./v1.ts";
               import { v2 } from "./v2.ts";
               const v3 = {
                 version: 3,
                 indexes: { cars: "id, name, updatedAt", tyreSets: "id, updatedAt" },
                 rows: { cars: ${change[step]} },
               };
               export const migrations = [v1, v2, v3];
               export const lowestSchema = 1;
               export const newestSchema = 3;`
            : undefined,
      },
    ],
  });
  return folder;
}
