/**
 * Which tests stand for a room: those in its folder, the checks against published values that use it, and what else
 * is named here. Simulated drivers and long random histories are left out: they would run once a mutant. `runs` is how
 * often a property is tried at most; `without` names files and single tests. Large rooms are judged chapter by chapter.
 * A chapter that is no folder names its `files`. Tests of hooks need a page (`isOnPage`), and wait for what a mutant keeps
 * from coming: after `longestMs` they have failed. A room that has no score in scores.json has not been judged yet.
 */
export const rooms = {
  domain: {
    aim: 80,
    runs: 60,
    tests: ["test/unit/domain", "test/unit/combo", "test/reference/iso8601"],
  },
  combo: { aim: 80, runs: 60, tests: ["test/unit/combo"] },
  numbers: {
    aim: 80,
    runs: 20,
    tests: [
      "test/unit/numbers",
      "test/unit/stats/sample",
      ...checks("distribution-quantiles", "nist-strd-univariate", "quantiles-spread"),
    ],
  },
  entry: {
    aim: 80,
    runs: 30,
    tests: ["test/unit/entry", "test/reference/iso8601"],
    without: ["test/unit/entry/shortFormInUse.test.ts"],
  },
  physics: {
    aim: 80,
    runs: 10,
    tests: ["test/unit/physics", ...checks("corner-physics", "viewing-geometry", "decibel-and-tails")],
  },
  "stats/account": chapter("account"),
  "stats/across": chapter("across"),
  "stats/bests": chapter("bests"),
  "stats/digest": chapter("digest"),
  // It has no tests of its own yet: those of the chapters above it sort laps all day.
  "stats/laps": {
    aim: 80,
    runs: 20,
    tests: ["test/unit/stats/digest", "test/unit/stats/session", "test/unit/stats/run"],
  },
  "stats/pace": chapter("pace", ...checks("best-of-k", "quantiles-spread")),
  "stats/period": chapter("period"),
  "stats/race": {
    ...chapter("race"),
    without: ["eight in ten simulated races end inside the range"],
  },
  "stats/random": chapter("random", ...checks("distribution-quantiles")),
  "stats/rigTests": chapter(
    "rigTests",
    ...checks("number-of-pairs", "wilcoxon-rank-sum", "wilcoxon-signed-rank"),
  ),
  "stats/run": chapter("run", ...checks("handbook-individuals-chart", "handbook-outliers-modified-z")),
  "stats/sample": chapter(
    "sample",
    ...checks("wilson-score-interval", "nist-strd-linear", "nist-strd-univariate", "mann-kendall-theil-sen"),
  ),
  "stats/session": chapter("session"),
  "stats/weeks": chapter(
    "weeks",
    ...checks(
      "curve-fits-exponential-power",
      "nist-strd-nonlinear",
      "mann-kendall-exact-table",
      "mann-kendall-theil-sen",
    ),
  ),
  "live/errands": { aim: 70, runs: 10, tests: ["test/unit/live/errands"] },
  "live/jobs": {
    aim: 70,
    runs: 10,
    tests: ["test/unit/live/jobs"],
    without: [
      "goes through more sessions than are read at once",
      "two hundred combos take no more reads than three",
      "after more sessions than are made at once none waits any more",
    ],
  },
  // What stands beside those two folders, chapter by chapter. Hooks are drawn, so these rooms have a page.
  "live/worker": ofLive(
    ["ask", "runErrand", "sendOut", "worker", "workerLine"],
    ["ask", "runErrand", "sendOut", "worker", "workerLine"].map((name) => `unit/live/${name}.test.ts`),
  ),
  "live/drafts": {
    ...ofLive(
      [
        "browserTab",
        "findDrafts",
        "keepDraft",
        "sayTypedFault",
        "typedWords",
        "useDraft",
        "useDraftsFrom",
        "useStoredText",
        "whenSeen",
      ],
      [
        ...["findDrafts", "keepDraft", "sayTypedFault", "typedWords"].map(
          (name) => `unit/live/${name}.test.ts`,
        ),
        ...["browserTab", "useDraft", "useDraftsFrom", "useStoredText", "whenSeen"].map(
          (name) => `components/live/${name}.test.tsx`,
        ),
      ],
    ),
    isOnPage: true,
  },
  "live/writes": {
    ...ofLive(
      ["newLaps", "sayNeededSpace", "useForm", "useGiveRun", "useShelfWrite", "useWrite", "useWriteForm"],
      [
        ...["newLaps", "sayNeededSpace"].map((name) => `unit/live/${name}.test.ts`),
        ...["useForm", "useGiveRun", "useWrite", "useWriteForm"].map(
          (name) => `components/live/${name}.test.tsx`,
        ),
      ],
    ),
    isOnPage: true,
  },
  "live/reads": {
    ...ofLive(
      [
        "askHere",
        "digestMaker",
        "eachMinute",
        "followRows",
        "logbookContext",
        "pageBest",
        "stampAhead",
        "useBackupFolder",
        "useCombos",
        "useFigures",
        "useHeldRows",
        "useNow",
        "usePageBest",
        "useRows",
        "useSessionsInDoubt",
        "useShelved",
        "useUnreadable",
      ],
      [
        ...["digestMaker", "pageBest", "stampAhead"].map((name) => `unit/live/${name}.test.ts`),
        "components/live/readingHooks.test.tsx",
      ],
    ),
    isOnPage: true,
  },
  "live/opening": {
    ...ofLive(
      ["LogbookProvider.tsx", "openAtStart", "readAgainEverywhere", "sayLost"],
      ["components/live/openAtStart.test.tsx"],
    ),
    isOnPage: true,
  },
  "live/files": {
    ...ofLive(
      [
        "enterOrDelete",
        "handOverBackup",
        "mergeDeed",
        "neededBy",
        "putDatesRight",
        "saveBackup",
        "useErrand",
        "useFolder",
        "useIncoming",
        "useLeaveDemo",
        "useLoadDemo",
        "useRemoveLogbook",
      ],
      ["backups", "errandHooks", "useLeaveDemo"].map((name) => `components/live/${name}.test.tsx`),
    ),
    isOnPage: true,
  },
  "db/checks": ofDb(),
  "db/edge": ofDb(),
  "db/migrations": ofDb(),
  "db/reads": ofDb(),
  "db/writes": ofDb(),
};

/** A chapter of stats with its own tests, and others. */
function chapter(name, ...more) {
  return { aim: 80, runs: 20, tests: [`test/unit/stats/${name}`, ...more] };
}

/** A chapter of db with all of its tests, but for long histories of many devices. */
function ofDb() {
  return {
    aim: 70,
    runs: 5,
    tests: ["test/unit/db", "test/reference/uuid-v7"],
    without: [
      "test/unit/db/clocks.test.ts",
      "test/unit/db/mutatedBackups.test.ts",
      // They count on a browser with no other logbook, and here all tests share one.
      "test/unit/db/shelf.test.ts",
      "test/unit/db/whatIsLetIn.test.ts",
    ],
  };
}

/** A chapter of live's own files: their names, and tests within test. */
function ofLive(names, tests) {
  const files = names.map((name) => `src/live/${name}${name.includes(".") ? "" : ".ts"}`);
  return { aim: 70, runs: 10, longestMs: 8000, files, tests: tests.map((place) => `test/${place}`) };
}

/** Folders of checks against published values. */
function checks(...names) {
  return names.map((name) => `test/reference/${name}`);
}
