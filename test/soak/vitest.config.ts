import { defineConfig } from "vitest/config";

/** Ten thousand mutated backups; LAP_LEDGER_SEED and LAP_LEDGER_FILES name others and another number of them. */
export default defineConfig({
  test: {
    name: "soak",
    environment: "node",
    include: ["test/soak/**/*.soak.ts"],
    env: { TZ: "Europe/Berlin" },
    testTimeout: 3_600_000,
  },
});
