import { resolve } from "node:path";
import { BroadcastChannel } from "node:worker_threads";
import { createVitest } from "vitest/node";

/**
 * A test runner for Stryker that keeps its tests loaded. Stryker's own for Vitest begins a worker and loads all
 * modules for each mutant, a second or more; tests of a pure room take milliseconds. Here one worker loads them once
 * (`stayingTests.ts`) and is told over a channel which mutant to switch on and which tests to run. Only a mutant in
 * code that runs while modules load needs a worker of its own.
 */
class StayingRunner {
  #worker;
  #durations = new Map();
  #loads = 0;

  capabilities() {
    return { reloadEnvironment: true };
  }

  async dryRun() {
    process.env.NODE_ENV = "test";
    const worker = await this.#load("measure");
    const { tests, coverage } = worker.loaded;
    for (const { id, timeSpentMs } of tests) this.#durations.set(id, timeSpentMs);
    await worker.end();
    return { status: "complete", tests: tests.map(asResult), mutantCoverage: coverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit, mutantActivation }) {
    if (mutantActivation === "static") return this.#runWhileLoading(activeMutant.id);
    const asked = {
      mutant: activeMutant.id,
      tests: testFilter.toSorted((a, b) => (this.#durations.get(a) ?? 0) - (this.#durations.get(b) ?? 0)),
      hitLimit,
    };
    let isFresh = !this.#worker;
    for (;;) {
      this.#worker ??= await this.#load("wait");
      const answer = await this.#worker.ask(asked);
      if (!answer.hasSpoilt) return answer.result;
      // The mutant has left something behind that fails without it too. Whether it was this one or one before it is
      // told by tests loaded anew.
      await this.dispose();
      if (isFresh) return answer.result;
      isFresh = true;
    }
  }

  async dispose() {
    const worker = this.#worker;
    this.#worker = undefined;
    await worker?.end();
  }

  async #runWhileLoading(mutant) {
    const worker = await this.#load("once", mutant);
    await worker.end();
    const { tests } = worker.loaded;
    const failed = tests.find(({ failure }) => failure !== undefined);
    return failed
      ? { status: "killed", killedBy: [failed.id], failureMessage: failed.failure, nrOfTests: tests.length }
      : { status: "survived", nrOfTests: tests.length };
  }

  /** A worker with all tests loaded; its `loaded` says how they went, where they were run. */
  async #load(mode, mutant) {
    this.#loads += 1;
    const channelName = `mutants-${process.pid}-${this.#loads}`;
    const channel = new BroadcastChannel(channelName);
    const heard = [];
    let wake;
    channel.onmessage = ({ data }) => {
      heard.push(data);
      wake?.();
    };
    const hear = async () => {
      while (heard.length === 0) await new Promise((resolved) => (wake = resolved));
      return heard.shift();
    };
    const vitest = await createVitest("test", vitestConfig, {
      plugins: mode === "measure" ? [fewRuns] : [fewRuns, withoutCounting],
    });
    vitest.provide("mutants", { channelName, mode, mutant, tests: testFiles() });
    const run = vitest.start().then(
      () => {
        const errors = vitest.state.getUnhandledErrors().map(String);
        const failures = vitest.state.getFiles().flatMap(({ result }) => result?.errors ?? []);
        heard.push({ hasEnded: true, error: [...errors, ...failures.map(({ message }) => message)][0] });
        wake?.();
      },
      (error) => {
        heard.push({ hasEnded: true, error: String(error) });
        wake?.();
      },
    );
    const end = async () => {
      channel.postMessage({ end: true });
      await run;
      await vitest.close();
      channel.close();
    };
    const loaded = await hear();
    if (loaded.hasEnded) {
      await vitest.close();
      channel.close();
      if (mode !== "once") throw new Error(`The tests cannot be loaded: ${loaded.error}`);
      return {
        loaded: { tests: [{ id: "loading", failure: loaded.error ?? "no test ran" }] },
        end: () => {},
      };
    }
    const worker = {
      loaded,
      end,
      ask: async (asked) => {
        channel.postMessage(asked);
        const answer = await hear();
        if (answer.hasEnded) throw new Error(`The worker with the tests has ended: ${answer.error}`);
        return answer;
      },
    };
    return worker;
  }
}

const here = (name) => resolve("test/mutants", name);

const vitestConfig = {
  config: false,
  root: process.cwd(),
  dir: process.cwd(),
  watch: false,
  include: ["test/mutants/allTests.test.ts"],
  pool: "threads",
  isolate: false,
  maxWorkers: 1,
  testTimeout: 120_000,
  reporters: [{}],
  runner: here("stayingTests.ts"),
  env: { TZ: "Europe/Berlin" },
};

/** Properties are run fewer times: a module of our own stands before the real one. */
const fewRuns = {
  name: "few-runs",
  enforce: "pre",
  resolveId: (source, importer) =>
    source === "fast-check" && importer !== here("fewRuns.ts") ? here("fewRuns.ts") : undefined,
};

/** Which test passes which mutant is counted once only: it is what makes mutated code slow. */
const withoutCounting = {
  name: "without-counting",
  transform: (code) => code.replace("function cover() {", "function cover() { return;"),
};

function testFiles() {
  return JSON.parse(process.env.LAP_LEDGER_MUTANTS_TESTS).map((name) => resolve(name));
}

function asResult({ id, file, timeSpentMs, failure }) {
  const told = { id, name: id, fileName: file, timeSpentMs };
  return failure === undefined ? { ...told, status: 0 } : { ...told, status: 1, failureMessage: failure };
}

/** In Stryker's form of a plugin. */
function makeRunner() {
  return new StayingRunner();
}
makeRunner.inject = [];

export const strykerPlugins = [{ kind: "TestRunner", name: "staying", factory: makeRunner }];
