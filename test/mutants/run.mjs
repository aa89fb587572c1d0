/**
 * How many small faults, put into a room one at a time, its tests notice: npm run mutants -- <room>.
 * Only what has changed since the last run is tried again; with --again everything is. With --only <text> only files
 * of that name are tried, and the published score stays as it is. With --quick mutants in code that runs while modules
 * load are left for a later run: each needs a worker of its own. Not part of npm test: see rooms.mjs and scores.json.
 */
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { rooms } from "./rooms.mjs";

/** What becomes of a mutant that no test notices, and how it is listed. */
const unnoticed = { Survived: "survived", NoCoverage: "not run ", Timeout: "ran out of time" };

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const [room, ...flags] = process.argv.slice(2);
const chosen = rooms[room];
if (!chosen) fail(`npm run mutants -- <room>, one of ${Object.keys(rooms).join(", ")}`);
const only = flags.includes("--only") ? flags[flags.indexOf("--only") + 1] : undefined;

process.chdir(here("../.."));
if (!existsSync(here("stryker/node_modules/.bin/stryker"))) run("npm", ["ci", "--prefix", here("stryker")]);

const kept = `.cache/mutants/${room}`;
rmSync(`${kept}/tmp`, { recursive: true, force: true });
mkdirSync(kept, { recursive: true });
if (flags.includes("--again")) rmSync(`${kept}/known.json`, { force: true });
forgetWhatRanOutOfTime(`${kept}/known.json`);
const report = `${kept}/${only ? "only" : "report"}.json`;
const inRoom = chosen.files ?? filesBelow(`src/${room}`);
const files = inRoom.filter((name) => !only || name.includes(only));
writeFileSync(
  `${kept}/stryker.json`,
  JSON.stringify({
    testRunner: "staying",
    plugins: [here("stayingRunner.mjs")],
    mutate: files,
    coverageAnalysis: "perTest",
    concurrency: 1,
    incremental: !only,
    incrementalFile: `${kept}/known.json`,
    reporters: ["json", "progress-append-only"],
    jsonReporter: { fileName: report },
    tempDirName: `.cache/mutants/${room}/tmp`,
    // Stryker reads this file with a function that TypeScript 7 has no more, unless it is not there.
    tsconfigFile: "none.json",
    // Time for a worker of its own on a machine that is busy; what is endless is told by its passes long before.
    timeoutMS: 30_000,
    timeoutFactor: 1,
    ignoreStatic: flags.includes("--quick"),
    disableTypeChecks: false,
    ignorePatterns: [".cache", "dist", "shots", "public", "test/mutants/stryker"],
    allowConsoleColors: false,
  }),
);
const started = Date.now();
run(here("stryker/node_modules/.bin/stryker"), ["run", `${kept}/stryker.json`], {
  LAP_LEDGER_MUTANTS_TESTS: JSON.stringify(testFiles(chosen)),
  LAP_LEDGER_MUTANTS_WITHOUT: JSON.stringify(chosen.without ?? []),
  LAP_LEDGER_MUTANTS_RUNS: String(chosen.runs),
  LAP_LEDGER_MUTANTS_LONGEST_MS: String(chosen.longestMs ?? 120_000),
  LAP_LEDGER_MUTANTS_PAGE: chosen.isOnPage ? "yes" : "",
});
tell(JSON.parse(readFileSync(report, "utf8")), (Date.now() - started) / 1000);

function tell({ files: judged }, seconds) {
  const accepted = JSON.parse(readFileSync(here("accepted.json"), "utf8"));
  const used = new Set();
  const counts = { Killed: 0, Endless: 0, Timeout: 0, Survived: 0, NoCoverage: 0 };
  let acceptedCount = 0;
  for (const [file, { source, mutants }] of Object.entries(judged)) {
    const lines = source.split("\n");
    for (const mutant of mutants) {
      const { location, replacement, mutatorName } = mutant;
      const status = ranOutOfTime(mutant) || mutant.status !== "Timeout" ? mutant.status : "Endless";
      counts[status] = (counts[status] ?? 0) + 1;
      if (!(status in unnoticed)) continue;
      const line = lines[location.start.line - 1];
      const why = accepted.find(
        (entry) =>
          entry.file === file &&
          line.includes(entry.line) &&
          (replacement ?? "").includes(entry.becomes ?? ""),
      );
      if (why) {
        used.add(why);
        acceptedCount += 1;
        continue;
      }
      const was = textAt(lines, location);
      say(`${unnoticed[status]} ${file}:${location.start.line} ${mutatorName}`);
      say(`    ${line.trim()}`);
      say(`    ${short(was)} -> ${short(replacement ?? "")}`);
    }
  }
  const {
    Killed: killed,
    Endless: endless,
    Timeout: outOfTime,
    Survived: survived,
    NoCoverage: notRun,
  } = counts;
  const { Ignored: notTried = 0 } = counts;
  const mutants = killed + endless + outOfTime + survived + notRun;
  const score = Math.round(((killed + endless) / mutants) * 1000) / 10;
  const acceptedHere = accepted.filter(({ file }) => inRoom.includes(file));
  if (acceptedHere.length > 0) say("\nAccepted, and why:");
  for (const entry of acceptedHere) {
    const isGone = !used.has(entry) && !only;
    say(`${entry.file}: ${entry.line}${entry.becomes ? ` -> ${entry.becomes}` : ""}`);
    say(`    ${entry.reason}${isGone ? "  (no such survivor any more: take this entry out)" : ""}`);
  }
  const date = new Date().toISOString().slice(0, 10);
  const figures = {
    mutants,
    killed,
    endless,
    survived,
    outOfTime,
    notRun,
    notTried,
    accepted: acceptedCount,
    score,
    date,
  };
  say(
    `\n${room}: ${score} % of ${mutants} mutants noticed (aim ${chosen.aim} %): ${killed} killed, ${endless} endless, `,
  );
  say(
    `${survived} survived, ${outOfTime} ran out of time, ${notRun} in code no test runs; ${acceptedCount} of these accepted. ${Math.round(seconds)} s.`,
  );
  const others = Object.entries(counts).filter(
    ([name]) => !["Killed", "Endless", ...Object.keys(unnoticed)].includes(name),
  );
  for (const [name, count] of others) say(`${count} not judged: ${name}`);
  if (only) return;
  const published = JSON.parse(readFileSync(here("scores.json"), "utf8"));
  writeFileSync(here("scores.json"), `${JSON.stringify({ ...published, [room]: figures }, null, 2)}\n`);
}

/** Whether the clock ended a mutant, which a busy machine does too: it is endless with too many passes, or standing still. */
function ranOutOfTime({ status, statusReason = "" }) {
  return status === "Timeout" && !/passes|stands still/.test(statusReason);
}

/** Such a mutant is tried again in the next run. */
function forgetWhatRanOutOfTime(file) {
  if (!existsSync(file)) return;
  const known = JSON.parse(readFileSync(file, "utf8"));
  for (const judged of Object.values(known.files))
    judged.mutants = judged.mutants.filter((mutant) => !ranOutOfTime(mutant));
  writeFileSync(file, JSON.stringify(known));
}

function testFiles({ tests, without = [] }) {
  return tests
    .flatMap((place) => (statSync(place).isFile() ? [place] : filesBelow(place)))
    .filter((name) => /\.test\.tsx?$/.test(name) && !without.includes(name));
}

function filesBelow(folder) {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((name) => join(folder, name))
    .filter((name) => /\.tsx?$/.test(name) && !name.endsWith(".d.ts"))
    .toSorted();
}

function textAt(lines, { start, end }) {
  if (start.line === end.line) return lines[start.line - 1].slice(start.column - 1, end.column - 1);
  return `${lines[start.line - 1].slice(start.column - 1)} …`;
}

function short(text) {
  const flat = text.replace(/\s+/g, " ");
  return flat.length > 90 ? `${flat.slice(0, 90)}…` : flat;
}

function run(command, args, env = {}) {
  const { status } = spawnSync(command, args, { stdio: "inherit", env: { ...process.env, ...env } });
  if (status !== 0) fail(`${command} ended with ${status}`);
}

function say(text) {
  process.stdout.write(`${text}\n`);
}

function fail(reason) {
  process.stderr.write(`${reason}\n`);
  process.exit(1);
}
