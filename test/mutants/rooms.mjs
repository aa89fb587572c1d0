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
  // The gaps of a replay review, as a small room of its own beside that of all the entry.
  "entry/gaps": {
    aim: 80,
    runs: 30,
    files: ["src/entry/readGaps.ts", "src/entry/writeGaps.ts"],
    tests: ["test/unit/entry/readGaps.test.ts", "test/unit/entry/writeGaps.test.ts"],
  },
  physics: {
    aim: 80,
    runs: 10,
    tests: ["test/unit/physics", ...checks("corner-physics", "viewing-geometry", "decibel-and-tails")],
  },
  "stats/account": chapter("account"),
  "stats/across": chapter("across"),
  "stats/bests": chapter("bests"),
  "stats/combo": chapter("combo"),
  "stats/corners": { ...chapter("corners"), runs: 5 },
  "stats/digest": chapter("digest"),
  "stats/laps": chapter("laps"),
  "stats/level": {
    ...chapter("level", ...checks("level-model")),
    without: ["test/unit/stats/level/longHistories.test.ts"],
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
  "stats/statement": { ...chapter("statement"), runs: 5 },
  "stats/targets": { ...chapter("targets", ...checks("brier-score")), runs: 5 },
  "stats/compare": chapter("compare"),
  "stats/verdict": chapter("verdict"),
  "stats/weeks": chapter(
    "weeks",
    ...checks(
      "curve-fits-exponential-power",
      "nist-strd-nonlinear",
      "mann-kendall-exact-table",
      "mann-kendall-theil-sen",
    ),
  ),
  "words/corners": {
    aim: 80,
    runs: 20,
    files: ["cornerAssumed", "cornerKind", "cornerMistakes", "cornerSays", "cornersSay", "gaps"].map(
      (name) => `src/words/${name}.ts`,
    ),
    tests: ["cornerKind", "cornerMistakes", "cornerSays", "cornersSay", "gaps"].map(
      (name) => `test/unit/words/${name}.test.ts`,
    ),
  },
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
      [
        ...["backups", "putDatesRight", "useErrand", "useIncoming", "useLeaveDemo", "useLoadDemo"],
        "useRemoveLogbook",
      ].map((name) => `components/live/${name}.test.tsx`),
    ),
    isOnPage: true,
  },
  "db/book": ofDbFiles(
    [
      ...[
        "derived",
        "dump",
        "fault",
        "idMaker",
        "inTransaction",
        "logbook",
        "nativeVersion",
        "openAsItIs",
        "rawRows",
      ],
      ...["readAround", "restore", "status", "unreadable"],
    ],
    [
      "dump",
      "fault",
      "idMaker",
      "logbookStates",
      "openLogbook",
      "readAround",
      "readRound",
      "restoreAsNew",
      "unreadable",
    ],
    "test/reference/uuid-v7",
  ),
  "db/derived": ofDbFiles(
    ["digests", "homesThere", "importedSession", "keptAnswers", "newestMark", "preferencesRow"],
    ["digests", "homesThere", "importedSession", "keptAnswers", "keptDigests"],
  ),
  "db/merging": ofDbFiles(
    [
      ...["bringAside", "editedOnBoth", "merge", "mergeInto", "partOf", "patch", "places", "putDifference"],
      ...["typedBeside", "unmerge", "versions"],
    ],
    [
      ...["bothEdited", "bringAside", "editedOnBoth", "merge", "mergeRows", "partOf", "patch", "places"],
      ...["putDifference", "sentPart", "takeBackMerge", "typedBeside", "typedRows", "unmerge", "versions"],
    ],
  ),
  "db/shelf": ofDbFiles(
    [
      ...["backupFolder", "drafts", "eraseAll", "keepCopy", "keptCopies", "shelf", "shelvedLogbooks"],
      "unlisted",
    ],
    ["drafts", "eraseAll", "keptCopies", "shelf", "shelvedLogbooks"],
  ),
  "db/checks": { aim: 70, runs: 5, tests: ["test/unit/db/checks"] },
  "db/edge": { aim: 70, runs: 5, tests: ["test/unit/db/edge"] },
  "db/migrations": {
    aim: 70,
    runs: 5,
    tests: ["test/unit/db/migrations"],
    without: [
      "whatever rows a step fails at, they go aside as they were and all others are brought over, on opening and on restoring",
    ],
  },
  "db/reads": {
    aim: 70,
    runs: 5,
    tests: [
      "test/unit/db/reads",
      "test/unit/db/readAround.test.ts",
      "test/unit/db/writes/combos.test.ts",
      "test/unit/db/writes/sessions.test.ts",
      "test/unit/db/writes/importLaps.test.ts",
    ],
  },
  "db/writes": {
    aim: 70,
    runs: 5,
    tests: [
      "test/unit/db/writes",
      "test/unit/db/damage.test.ts",
      "test/unit/db/digests.test.ts",
      "test/unit/db/wrongClock.test.ts",
    ],
    // What damage does to reading is tried here at length, and no write is made.
    without: [
      "whatever one field of one row holds, all other rows are read, and the row is named or can be drawn",
      "a time zone the checker takes is read, a fixed distance from UTC among them",
      "stamps that cannot be right take no row out of sight, and stop neither a merge nor a deletion",
      "an instant that no calendar can tell is set aside like a date that is none",
    ],
  },
};

/** A chapter of stats with its own tests, and others. */
function chapter(name, ...more) {
  return { aim: 80, runs: 20, tests: [`test/unit/stats/${name}`, ...more] };
}

/** Files of db that stand in no folder, with the tests that are named. */
function ofDbFiles(files, tests, ...more) {
  return {
    aim: 70,
    runs: 20,
    files: files.map((name) => `src/db/${name}.ts`),
    tests: [...tests.map((name) => `test/unit/db/${name}.test.ts`), ...more],
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
