import { readFile } from "node:fs/promises";
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
  /** One for the worker that stays and one for those of a single mutant: they keep what they have compiled. */
  #vitestToStay;
  #vitestForOnce;

  capabilities() {
    return { reloadEnvironment: true };
  }

  async dryRun() {
    process.env.NODE_ENV = "test";
    const vitest = await makeVitest([...beforeReal]);
    const worker = await load(vitest, "measure");
    const { tests, coverage } = worker.loaded;
    await worker.end();
    await vitest.close();
    for (const { id, timeSpentMs } of tests) this.#durations.set(id, timeSpentMs);
    return { status: "complete", tests: tests.map(asResult), mutantCoverage: coverage };
  }

  async mutantRun({ activeMutant, sandboxFileName, testFilter, hitLimit, mutantActivation }) {
    if (mutantActivation === "static") return this.#runWhileLoading(activeMutant.id);
    const asked = {
      mutant: activeMutant.id,
      tests: testFilter.toSorted((a, b) => (this.#durations.get(a) ?? 0) - (this.#durations.get(b) ?? 0)),
      hitLimit,
    };
    const isFresh = !this.#worker;
    const answer = await this.#ask(asked);
    // A mutant may have left something behind that fails without it too: whether it was this one or one before it is
    // told by tests loaded anew. So it is where what an earlier test had the code remember may have saved a mutant.
    const isInDoubt =
      answer.hasSpoilt || (answer.result.status === "survived" && (await hasMemory(sandboxFileName)));
    if (!isInDoubt) return answer.result;
    await this.#endWorker();
    if (isFresh) return answer.result;
    const again = await this.#ask(asked);
    if (again.hasSpoilt) await this.#endWorker();
    return again.result;
  }

  async dispose() {
    await this.#endWorker();
    await this.#vitestToStay?.close();
    await this.#vitestForOnce?.close();
  }

  async #ask(asked) {
    this.#vitestToStay ??= await makeVitest([...beforeReal, withoutCounting]);
    this.#worker ??= await load(this.#vitestToStay, "wait");
    return this.#worker.ask(asked);
  }

  async #endWorker() {
    const worker = this.#worker;
    this.#worker = undefined;
    await worker?.end();
  }

  async #runWhileLoading(mutant) {
    this.#vitestForOnce ??= await makeVitest([...beforeReal, withoutCounting]);
    const outcome = await load(this.#vitestForOnce, "once", mutant).catch((failure) => ({ failure }));
    if (outcome.failure) {
      const failureMessage = String(outcome.failure);
      return { status: "killed", killedBy: ["loading"], failureMessage, nrOfTests: 0 };
    }
    await outcome.end();
    const { tests } = outcome.loaded;
    const failed = tests.find(({ failure }) => failure !== undefined);
    return failed
      ? { status: "killed", killedBy: [failed.id], failureMessage: failed.failure, nrOfTests: tests.length }
      : { status: "survived", nrOfTests: tests.length };
  }
}

/** Whether a file keeps something from one call to the next: a variable of the module, or a map that begins empty. */
async function hasMemory(file) {
  return /^(export )?(let |const \w+ = new (Weak)?(Map|Set)(<.*>)?\(\);)/m.test(await readFile(file, "utf8"));
}

let loads = 0;

/**
 * A worker with all tests loaded; its `loaded` says how they went, where they were run.
 * @throws Error where they cannot be loaded
 */
async function load(vitest, mode, mutant) {
  loads += 1;
  const channelName = `mutants-${process.pid}-${loads}`;
  const channel = new BroadcastChannel(channelName);
  const heard = [];
  let wake;
  const tell = (data) => {
    heard.push(data);
    wake?.();
  };
  channel.onmessage = ({ data }) => tell(data);
  const hear = async () => {
    while (heard.length === 0) await new Promise((resolved) => (wake = resolved));
    const [data] = heard.splice(0, 1);
    if (data.hasEnded) {
      channel.close();
      throw new Error(`The worker with the tests has ended: ${data.error ?? "no reason given"}`);
    }
    return data;
  };
  vitest.state.filesMap.clear();
  const without = JSON.parse(process.env.LAP_LEDGER_MUTANTS_WITHOUT);
  vitest.provide("mutants", { channelName, mode, mutant, tests: testFiles(), without });
  const run = vitest.start().then(
    () => {
      const failures = vitest.state.getFiles().flatMap(({ result }) => result?.errors ?? []);
      const [error] = [...vitest.state.getUnhandledErrors(), ...failures].map(({ message }) => message);
      tell({ hasEnded: true, error });
    },
    (error) => tell({ hasEnded: true, error: String(error) }),
  );
  return {
    loaded: await hear(),
    ask: (asked) => {
      channel.postMessage(asked);
      return hear();
    },
    end: async () => {
      channel.postMessage({ end: true });
      await run;
      channel.close();
    },
  };
}

const here = (name) => resolve("test/mutants", name);

function makeVitest(plugins) {
  const config = {
    config: false,
    root: process.cwd(),
    dir: process.cwd(),
    watch: false,
    include: ["test/mutants/allTests.test.ts"],
    pool: "threads",
    maxWorkers: 1,
    // A test that waits for what a mutant keeps from coming fails by it.
    testTimeout: Number(process.env.LAP_LEDGER_MUTANTS_LONGEST_MS),
    reporters: [{}],
    runner: here("stayingTests.ts"),
    env: { TZ: "Europe/Berlin" },
    ...(process.env.LAP_LEDGER_MUTANTS_PAGE && {
      environment: "jsdom",
      setupFiles: ["test/support/components.ts"],
    }),
  };
  return createVitest("test", config, { plugins });
}

/** A module of our own stands before a real one. */
const standsBefore = (real, own) => ({
  name: `before ${real}`,
  enforce: "pre",
  resolveId: (source, importer) => (source === real && importer !== here(own) ? here(own) : undefined),
});

/** Properties are run fewer times, and what a page never comes to show is not waited for as long. */
const beforeReal = [
  standsBefore("fast-check", "fewRuns.ts"),
  standsBefore("@testing-library/react", "shortWaits.ts"),
];

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
