/**
 * npm run bench: ratios of figures, then of the app in a browser. npm run bench -- calibration: how true forecasts are, which
 * takes some ten minutes; `-- calibration 100 7` for 100 drivers a kind and other random numbers.
 */
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

const [part, drivers = "400", seed = "20261"] = process.argv.slice(2);

const run = (command, ...given) => {
  const { status } = spawnSync("npx", [command, ...given], {
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  if (status !== 0) process.exit(status ?? 1);
};

if (part === "calibration") {
  const { module } = await runnerImport(fileURLToPath(new URL("calibration.ts", import.meta.url)), {
    configFile: false,
  });
  const begun = performance.now();
  module.calibration(Number(drivers), Number(seed), (text) => process.stdout.write(`${text}\n`));
  process.stdout.write(`${Math.round((performance.now() - begun) / 1000)} s\n`);
} else {
  run("vitest", "bench", "--run", "--project", "core");
  run("vite", "build");
  run("playwright", "test", "-c", "test/bench/playwright.config.ts");
}
