/** Writes the demo logbook, the truth about it and its picture beside this file: npm run demo. */
import { writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

const here = (name) => new URL(name, import.meta.url);
const { module } = await runnerImport(fileURLToPath(here("generate.ts")), { configFile: false });
const { logbook, truth, picture } = await module.generate();
await writeFile(here("demo-logbook.json"), logbook);
await writeFile(here("truth.json"), truth);
await writeFile(here("picture.json"), picture);
