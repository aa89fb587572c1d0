import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type CDPSession, chromium, expect, type Page, test } from "@playwright/test";
import { v1 } from "../../src/db/migrations/v1.ts";
import { findBrowser } from "../support/browser.ts";
import { logbooksThere } from "../support/journeyDatabase.ts";
import { pass, sampleMs } from "../support/waits.ts";
import { backupWithLaps } from "./manyLaps.ts";

const laps = Number(process.env["LAP_LEDGER_LAPS"] ?? 100_000);

/** A restore of 100,000 laps against a raw write of the same rows in the same browser. Printed, never asserted. */
test(`a restore of ${laps} laps`, async ({ baseURL }) => {
  const folder = mkdtempSync(join(tmpdir(), "lap-ledger-"));
  const file = join(folder, "backup.json");
  writeFileSync(file, await backupWithLaps(laps));
  const { executablePath, env } = await findBrowser();
  const context = await chromium.launchPersistentContext(join(folder, "profile"), {
    executablePath,
    env,
    args: ["--no-sandbox", "--disable-gpu"],
    viewport: { width: 1280, height: 800 },
  });
  try {
    const page = await context.newPage();
    await page.goto(`${baseURL}/#/data`);
    const raw = await rawWrite(page, readFileSync(file, "utf8"));
    const cdp = await context.newCDPSession(page);
    await cdp.send("Performance.enable");
    const memory = () => residentBytes(folder);
    const restored = await restore(page, { cdp, file, memory });
    const cancelled = await cancel(page, file);
    say(`raw write of the same rows, strict, two thousand at a time: ${raw.toFixed(0)} ms`);
    say(
      `restore, from the press to the open logbook: ${restored.ms.toFixed(0)} ms, ratio ${(restored.ms / raw).toFixed(2)}`,
    );
    say(
      `progress was said ${restored.steps} times; longest time the page did not answer: ${restored.longest.toFixed(0)} ms`,
    );
    say(`heap of the page: ${mega(restored.before.heap)} before, ${mega(restored.peak.heap)} at most`);
    say(
      `memory of all the browser's processes: ${mega(restored.before.resident)} before, ${mega(restored.peak.resident)} at most`,
    );
    say(`stopped half way: gone after ${cancelled.toFixed(0)} ms, nothing left behind`);
  } finally {
    await context.close();
    rmSync(folder, { recursive: true, force: true });
  }
});

const say = (line: string) => process.stdout.write(`${line}\n`);
const mega = (bytes: number) => `${(bytes / 1e6).toFixed(0)} MB`;

/** Writes the rows of a backup with the browser's own calls, into tables and indexes like the app's; ms. */
function rawWrite(page: Page, text: string): Promise<number> {
  return page.evaluate(
    async ([backup = "", indexes]) => {
      const { tables } = JSON.parse(backup) as { tables: Record<string, object[]> };
      const opening = indexedDB.open("raw", 1);
      opening.onupgradeneeded = () => {
        for (const [table, index] of Object.entries(indexes as Record<string, string>)) {
          const [key = "", ...rest] = index.split(", ");
          const store = opening.result.createObjectStore(table, { keyPath: key });
          for (const name of rest)
            store.createIndex(name, name.startsWith("[") ? name.slice(1, -1).split("+") : name);
        }
      };
      const database = await new Promise<IDBDatabase>((resolve, reject) => {
        opening.onsuccess = () => resolve(opening.result);
        opening.onerror = () => reject(opening.error);
      });
      const began = performance.now();
      for (const [table, rows] of Object.entries(tables))
        for (let from = 0; from < rows.length; from += 2000)
          await new Promise<void>((resolve, reject) => {
            const transaction = database.transaction(table, "readwrite", { durability: "strict" });
            transaction.oncomplete = () => resolve();
            transaction.onabort = () => reject(transaction.error);
            const store = transaction.objectStore(table);
            for (const row of rows.slice(from, from + 2000)) store.add(row);
          });
      const took = performance.now() - began;
      database.close();
      indexedDB.deleteDatabase("raw");
      return took;
    },
    [text, v1.indexes] as [string, unknown],
  );
}

async function choose(page: Page, file: string): Promise<void> {
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Choose a backup file" }).click();
  await (await chooser).setFiles(file);
  await page.getByRole("button", { name: "Restore as a new logbook" }).waitFor({ timeout: 300_000 });
}

/** Memory that a browser holds in all its processes, found by the profile it was started with; NaN off Linux. */
function residentBytes(profile: string): number {
  if (process.platform !== "linux") return Number.NaN;
  const all = readdirSync("/proc").filter((pid) => /^\d+$/.test(pid));
  const own = new Set(all.filter((pid) => ofProcess(pid, "cmdline").includes(profile)));
  let bytes = 0;
  // Ids rise from parent to child, so that one pass finds children of children, too.
  for (const pid of all.toSorted((a, b) => Number(a) - Number(b))) {
    const status = ofProcess(pid, "status");
    const field = (name: string) => new RegExp(`^${name}:\\s+(\\d+)`, "m").exec(status)?.[1] ?? "";
    if (own.has(field("PPid"))) own.add(pid);
    if (own.has(pid)) bytes += Number(field("VmRSS")) * 1024;
  }
  return bytes;
}

/** Empty where the process has ended meanwhile. */
function ofProcess(pid: string, file: string): string {
  try {
    return readFileSync(`/proc/${pid}/${file}`, "utf8");
  } catch {
    return "";
  }
}

interface Restored {
  readonly cdp: CDPSession;
  readonly file: string;
  readonly memory: () => number;
}

async function restore(page: Page, { cdp, file, memory }: Restored) {
  const heap = async () => {
    const { metrics } = await cdp.send("Performance.getMetrics");
    return metrics.find(({ name }) => name === "JSHeapUsedSize")?.value ?? Number.NaN;
  };
  await choose(page, file);
  const both = async () => ({ heap: await heap(), resident: memory() });
  const before = await both();
  await page.evaluate(() => {
    const seen = { steps: 0, longest: 0, last: performance.now() };
    Object.assign(window, { seen });
    setInterval(() => {
      const now = performance.now();
      seen.longest = Math.max(seen.longest, now - seen.last - 10);
      seen.last = now;
    }, 10);
    let said = "";
    new MutationObserver(() => {
      const text = /\d+ of \d+ rows stored/.exec(document.body.textContent ?? "")?.[0] ?? "";
      if (text !== said) seen.steps += 1;
      said = text;
    }).observe(document.body, { childList: true, subtree: true, characterData: true });
  });
  let peak = before;
  let isDone = false;
  const began = performance.now();
  await page.getByRole("button", { name: "Restore as a new logbook" }).click();
  const watching = (async () => {
    while (!isDone) {
      const now = await both();
      peak = { heap: Math.max(peak.heap, now.heap), resident: Math.max(peak.resident, now.resident) };
      await pass(sampleMs);
    }
  })();
  await page.getByText("is open. Your other logbooks").first().waitFor({ timeout: 300_000 });
  const ms = performance.now() - began;
  isDone = true;
  await watching;
  const seen = await page.evaluate(
    () => (window as unknown as { seen: { steps: number; longest: number } }).seen,
  );
  return { ms, before, peak, ...seen };
}

/** Stops a second restore in the middle; ms until the page says so, NaN when it was over too soon to be stopped. */
async function cancel(page: Page, file: string): Promise<number> {
  const there = (await logbooksThere(page)).length;
  await choose(page, file);
  await page.getByRole("button", { name: "Restore as a new logbook" }).click();
  const began = performance.now();
  const stop = page.getByRole("button", { name: "Stop", exact: true });
  const isStopped = await stop.click({ timeout: 10_000 }).then(
    () => true,
    () => false,
  );
  if (!isStopped) return Number.NaN;
  await page.getByText("Stopped; nothing was changed").first().waitFor({ timeout: 60_000 });
  const took = performance.now() - began;
  await expect.poll(async () => (await logbooksThere(page)).length).toBe(there);
  return took;
}
