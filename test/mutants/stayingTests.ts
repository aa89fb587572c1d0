import { performance } from "node:perf_hooks";
import { BroadcastChannel } from "node:worker_threads";
import {
  inject,
  type RunnerTask,
  type RunnerTestCase,
  type RunnerTestFile,
  type RunnerTestSuite,
} from "vitest";
import { VitestTestRunner } from "vitest/runners";
import { getFn, getHooks } from "vitest/suite";

declare module "vitest" {
  interface ProvidedContext {
    readonly mutants: {
      readonly channelName: string;
      /** Run all tests, then wait for mutants; only wait for them; or run all tests with one mutant and end. */
      readonly mode: "measure" | "wait" | "once";
      readonly mutant?: string;
      readonly tests: readonly string[];
      /** Names of tests that are left out. */
      readonly without: readonly string[];
    };
  }
}

/** What Stryker's mutants read and write. */
interface Switch {
  activeMutant?: string | undefined;
  currentTestId?: string | undefined;
  hitCount?: number | undefined;
  hitLimit?: number | undefined;
  mutantCoverage?: unknown;
}

interface Asked {
  readonly end?: true;
  readonly mutant: string;
  readonly tests: readonly string[];
  readonly hitLimit?: number;
}

/** Stryker allows a hundred times the passes of a run without mutants, for those who look for the smallest failure. */
const passesOfStrykers = 0.2;

/** Vitest's runner, but it stays after the tests are loaded and runs those it is asked for, with the mutant asked for. */
export default class StayingTests extends VitestTestRunner {
  readonly #told = inject("mutants");
  readonly #switch: Switch = mutantSwitch();
  readonly #tests = new Map<string, RunnerTestCase>();
  readonly #ids = new Map<RunnerTestCase, string>();
  readonly #prepared = new Set<RunnerTestSuite>();

  constructor(config: ConstructorParameters<typeof VitestTestRunner>[0]) {
    super(config);
    this.#switch.activeMutant = this.#told.mutant;
  }

  async onBeforeRunFiles([file]: RunnerTestFile[]): Promise<void> {
    if (!file || file.result?.state === "fail") return;
    for (const test of testsOf(file)) {
      if (this.#told.without.includes(test.name)) {
        test.mode = "skip";
        continue;
      }
      const id = [...namesOf(test)].join(" > ");
      const twins = this.#tests.has(id) ? `${id} (${this.#tests.size})` : id;
      this.#tests.set(twins, test);
      this.#ids.set(test, twins);
    }
    if (this.#told.mode !== "wait") return;
    await this.#stay([]);
    file.mode = "skip";
  }

  override onBeforeTryTask(test: RunnerTestCase): void {
    super.onBeforeTryTask(test);
    emptyBrowser();
    this.#switch.currentTestId = this.#ids.get(test);
  }

  override onAfterRunTask(test: RunnerTestCase): void {
    super.onAfterRunTask(test);
    this.#switch.currentTestId = undefined;
    if (this.#told.mode === "once" && test.result?.state === "fail") this.cancel("test-failure");
  }

  override onAfterRunFiles(): void | Promise<void> {
    super.onAfterRunFiles();
    if (this.#told.mode === "wait" || this.#tests.size === 0) return;
    for (const test of this.#tests.values()) for (const suite of suitesOf(test)) this.#prepared.add(suite);
    const ran = [...this.#tests].map(([id, { result, suite }]) => ({
      id,
      file: outermost(suite),
      timeSpentMs: result?.duration ?? 0,
      failure: result?.errors?.[0]?.message ?? suite?.result?.errors?.[0]?.message,
    }));
    return this.#stay(ran);
  }

  /** Answers one question after another until it is told to end. */
  async #stay(ran: readonly object[]): Promise<void> {
    const channel = new BroadcastChannel(this.#told.channelName);
    await new Promise<void>((ended) => {
      channel.onmessage = async (message) => {
        const { data: asked } = message as { data: Asked };
        if (asked.end) return ended();
        try {
          channel.postMessage(await this.#judge(asked));
        } catch (error) {
          channel.postMessage({ hasEnded: true, error: String(error) });
        }
      };
      channel.postMessage({ tests: ran, coverage: this.#switch.mutantCoverage });
    });
    channel.close();
  }

  /** Whether a test fails with the mutant; `hasSpoilt` if that test then fails without it as well. */
  async #judge({ mutant, tests, hitLimit }: Asked) {
    let nrOfTests = 0;
    for (const id of tests) {
      const test = this.#tests.get(id);
      if (!test) throw new Error(`No test ${id}`);
      nrOfTests += 1;
      const state = this.#switch;
      state.hitCount = 0;
      state.hitLimit = hitLimit && hitLimit * passesOfStrykers;
      state.activeMutant = internalised(mutant);
      const failure = await this.#outcomeOf(test);
      state.activeMutant = undefined;
      const isEndless = state.hitLimit !== undefined && state.hitCount > state.hitLimit;
      if (failure === undefined && !isEndless) continue;
      const hasSpoilt = (await this.#outcomeOf(test)) !== undefined;
      const reason = isEndless ? `more than ${state.hitLimit} passes` : standsStill;
      const result =
        isEndless || failure === standsStill
          ? { status: "timeout", reason }
          : { status: "killed", killedBy: [id], failureMessage: failure, nrOfTests };
      return { hasSpoilt, result };
    }
    return { hasSpoilt: false, result: { status: "survived", nrOfTests } };
  }

  /** As `#failureOf`, but a test that waits for what never comes is left to itself. */
  async #outcomeOf(test: RunnerTestCase): Promise<string | undefined> {
    const watch = watchForStandstill();
    const outcome = await Promise.race([this.#failureOf(test), watch.standstill]);
    watch.end();
    return outcome;
  }

  /** Runs one test as Vitest does, with what its suites do before and after it. */
  async #failureOf(test: RunnerTestCase): Promise<string | undefined> {
    emptyBrowser();
    const suites = suitesOf(test);
    const failures: unknown[] = [];
    const attempt = async (work: () => unknown) => {
      try {
        await work();
      } catch (error) {
        failures.push(error);
      }
    };
    for (const suite of suites) {
      if (this.#prepared.has(suite)) continue;
      this.#prepared.add(suite);
      for (const hook of getHooks(suite).beforeAll) await attempt(() => hook(suite));
    }
    const cleanups: unknown[] = [];
    await attempt(async () => {
      for (const suite of suites)
        for (const hook of getHooks(suite).beforeEach) cleanups.push(await hook(test.context, suite));
      await getFn(test)();
    });
    for (const suite of suites.toReversed())
      for (const hook of getHooks(suite).afterEach.toReversed())
        await attempt(() => hook(test.context, suite));
    for (const cleanup of cleanups) if (typeof cleanup === "function") await attempt(() => cleanup());
    const hasFailed = failures.length > 0;
    return hasFailed === (test.fails ?? false) ? undefined : String(failures[0] ?? "expected to fail");
  }
}

/**
 * All files of tests share the one fake browser they find, and a test is run again and again: it finds no database of
 * another's, nor of its own. Connections that are open go on with what they have.
 */
function emptyBrowser(): void {
  if (typeof indexedDB !== "undefined") Object.assign(indexedDB, new IDBFactory());
}

const standsStill = "stands still";
const standstillMs = 4000;

/** Tells when the worker has had nothing to do for a while, which a busy machine alone never brings about. */
function watchForStandstill() {
  let end: () => void = () => undefined;
  const standstill = new Promise<string>((resolve) => {
    let before = performance.eventLoopUtilization();
    const timer = setInterval(() => {
      const now = performance.eventLoopUtilization();
      if (performance.eventLoopUtilization(now, before).utilization < 0.02) resolve(standsStill);
      before = now;
    }, standstillMs);
    end = () => clearInterval(timer);
  });
  return { standstill, end };
}

/** The engine compares such a text with those in the code by address, which mutated code does at every step. */
function internalised(text: string): string {
  return Object.keys({ [text]: text })[0] ?? text;
}

function mutantSwitch(): Switch {
  const globals = globalThis as { __stryker__?: Switch };
  globals.__stryker__ ??= {};
  return globals.__stryker__;
}

function testsOf(task: RunnerTask): RunnerTestCase[] {
  if (task.type === "suite") return task.tasks.flatMap(testsOf);
  return task.mode === "run" || task.mode === "queued" ? [task] : [];
}

/** From the file inwards. */
function suitesOf(test: RunnerTestCase): RunnerTestSuite[] {
  const suites: RunnerTestSuite[] = [];
  for (let suite = test.suite; suite; suite = suite.suite) suites.unshift(suite);
  return [test.file, ...suites];
}

/** The suite that stands for a file of tests bears its path. */
function outermost(suite: RunnerTestSuite | undefined): string | undefined {
  return suite?.suite ? outermost(suite.suite) : suite?.name;
}

function namesOf(test: RunnerTestCase): string[] {
  const [, ...suites] = suitesOf(test);
  return [...suites.map(({ name }) => name.split("/").at(-1) ?? name), test.name];
}
