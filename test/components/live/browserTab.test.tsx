import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { readTabMark } from "#state/tabMark.ts";
import { browserTab } from "../../../src/live/browserTab.ts";

/** The locks of a browser, which all of its tabs share, as far as a tab uses them. */
function someLocks() {
  const held = new Set<string>();
  const waiting = new Map<string, () => void>();
  const request = (name: string, { signal }: { signal: AbortSignal }, take: () => Promise<unknown>) =>
    new Promise((resolve, reject) => {
      const hold = () => {
        held.add(name);
        resolve(take());
      };
      if (!held.has(name)) return hold();
      waiting.set(name, hold);
      signal.addEventListener("abort", () => {
        waiting.delete(name);
        reject(new DOMException("waited too long", "TimeoutError"));
      });
    });
  const query = async () => ({ held: [...held].map((name) => ({ name })) });
  /** A page is gone, and with it its lock: the one that waits for it gets it. */
  const giveBack = (name: string) => {
    held.delete(name);
    waiting.get(name)?.();
  };
  return { held, locks: { request, query }, giveBack };
}

const withLocks = (locks: unknown) =>
  vi.stubGlobal("navigator", Object.create(navigator, { locks: { value: locks } }));

const channels: BroadcastChannel[] = [];
class ClosedAtTheEnd extends BroadcastChannel {
  constructor(name: string) {
    super(name);
    channels.push(this);
  }
}

beforeEach(() => {
  window.sessionStorage.clear();
  vi.stubGlobal("BroadcastChannel", ClosedAtTheEnd);
});
afterEach(() => {
  for (const channel of channels.splice(0)) channel.close();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

it("a tab gets an id of its own, keeps it over a reload, and is among those that are open", async () => {
  const { held, locks } = someLocks();
  withLocks(locks);
  held.add("another app");
  const tab = browserTab();
  const id = await tab.id;
  expect(id).toMatch(/^[0-9a-f-]{36}$/);
  expect(readTabMark()).toBe(id);
  expect([...(await tab.living())]).toEqual([id]);
  expect([...held]).toEqual(["another app", `lap-ledger tab ${id}`]);
  // The page is gone, and with it its lock; the mark stays.
  held.delete(`lap-ledger tab ${id}`);
  const again = browserTab();
  expect(await again.id).toBe(id);
  expect([...(await again.living())]).toEqual([id]);
});

it("a duplicated tab, which has copied the mark, gets an id of its own after a while", async () => {
  const { locks } = someLocks();
  withLocks(locks);
  const first = browserTab();
  const id = await first.id;
  const second = browserTab();
  const other = await second.id;
  expect(other).not.toBe(id);
  expect(readTabMark()).toBe(other);
  expect([...(await first.living())].sort()).toEqual([id, other].sort());
});

it("a page that reloads waits until its old self is gone, however slowly that goes", async () => {
  const { locks, giveBack } = someLocks();
  withLocks(locks);
  const id = await browserTab().id;
  vi.spyOn(performance, "getEntriesByType").mockReturnValue([
    { type: "reload" } as PerformanceNavigationTiming,
  ]);
  const again = browserTab();
  setTimeout(() => giveBack(`lap-ledger tab ${id}`), 1000);
  expect(await again.id).toBe(id);
  expect([...(await again.living())]).toEqual([id]);
});

it("a browser that holds no lock has no tab that is known to be open", async () => {
  const { locks } = someLocks();
  withLocks({ ...locks, query: async () => ({}) });
  const tab = browserTab();
  await tab.id;
  expect([...(await tab.living())]).toEqual([]);
});

for (const [what, locks] of [
  ["no locks", undefined],
  ["locks that cannot be asked for", { request: () => undefined }],
] as const)
  it(`where a page has ${what}, the tabs ask each other`, async () => {
    withLocks(locks);
    const first = browserTab();
    const id = await first.id;
    expect(readTabMark()).toBe(id);
    expect([...(await first.living())]).toEqual([id]);
    // Duplicated: the mark is copied, and its tab still answers to it.
    const second = browserTab();
    const other = await second.id;
    expect(other).not.toBe(id);
    expect(readTabMark()).toBe(other);
    expect([...(await first.living())].sort()).toEqual([id, other].sort());
    expect([...(await second.living())].sort()).toEqual([id, other].sort());
  });

it("where a page has no locks, a tab that reloads is itself again, for nobody else answers to its mark", async () => {
  withLocks(undefined);
  window.sessionStorage.setItem("lap-ledger tab", "0192-kept");
  expect(await browserTab().id).toBe("0192-kept");
});
