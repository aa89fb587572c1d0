/**
 * Which tests stand for a room: those in its folder, the checks against published values that use it, and what else
 * is named here. Simulated drivers and long random histories are left out: they would run once a mutant. `runs` is how
 * often a property is tried at most.
 */
export const rooms = {
  domain: {
    aim: 80,
    runs: 60,
    tests: ["test/unit/domain", "test/unit/combo", "test/reference/iso8601"],
  },
  combo: { aim: 80, runs: 60, tests: ["test/unit/combo"] },
  entry: {
    aim: 80,
    runs: 30,
    tests: ["test/unit/entry", "test/reference/iso8601"],
    without: ["test/unit/entry/shortFormInUse.test.ts"],
  },
  physics: {
    aim: 80,
    runs: 10,
    tests: [
      "test/unit/physics",
      "test/reference/corner-physics",
      "test/reference/viewing-geometry",
      "test/reference/decibel-and-tails",
    ],
  },
  db: {
    aim: 70,
    runs: 10,
    tests: ["test/unit/db", "test/reference/uuid-v7"],
    without: ["test/unit/db/clocks.test.ts", "test/unit/db/mutatedBackups.test.ts"],
  },
  live: { aim: 70, runs: 10, tests: ["test/unit/live"] },
};
