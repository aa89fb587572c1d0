import { idMaker } from "#db";
import type { Id } from "#domain";
import { keepTabMark, readTabMark } from "#state/tabMark.ts";

/** This tab among the tabs of the app: what is typed belongs to one of them. */
export interface Tab {
  /** The same after a reload, and never that of another tab that is open. */
  readonly id: Promise<Id>;
  /** The tabs that are open now, this one among them. */
  readonly living: () => Promise<ReadonlySet<Id>>;
}

const channelName = "lap-ledger tab";
const prefix = "lap-ledger tab ";
/** A tab that was duplicated finds the first one there, and that one stays. */
const patienceMs = 400;
/** A page that reloads finds its old self still on the way out, on a busy machine for some seconds. */
const patienceAtReloadMs = 8000;
/** Without locks, every tab that is open has answered by then. */
const rollCallMs = 200;

/**
 * The tab this page is in. Its id lies in the tab's own storage, which a reload keeps and a duplicated tab copies; so it
 * is also claimed: by a lock, which the browser gives back however the tab ends, or, where a page has no locks (an
 * address without https), by asking the other tabs.
 */
export function browserTab(): Tab {
  return typeof navigator.locks?.query === "function" ? lockedTab(navigator.locks) : askingTab();
}

function lockedTab(locks: LockManager): Tab {
  const claim = (id: Id) =>
    new Promise<boolean>((resolve) => {
      const patience = AbortSignal.timeout(isReload() ? patienceAtReloadMs : patienceMs);
      locks
        .request(prefix + id, { signal: patience }, () => {
          resolve(true);
          // Held as long as the page is there.
          return new Promise(() => undefined);
        })
        .catch(() => resolve(false));
    });
  return {
    id: claimed(claim),
    living: async () => {
      const { held = [] } = await locks.query();
      const names = held.map(({ name = "" }) => name).filter((name) => name.startsWith(prefix));
      return new Set(names.map((name) => name.slice(prefix.length)));
    },
  };
}

const isReload = () =>
  performance.getEntriesByType("navigation").some((entry) => "type" in entry && entry.type === "reload");

type Call = { readonly from: string; readonly id?: Id };

function askingTab(): Tab {
  const page = newId();
  const channel = new BroadcastChannel(channelName);
  let mine: Id | undefined;
  const heard = new Set<(id: Id) => void>();
  channel.addEventListener("message", ({ data }: MessageEvent<Call>) => {
    if (data.from === page) return;
    if (data.id !== undefined) for (const hear of heard) hear(data.id);
    else if (mine !== undefined) channel.postMessage({ from: page, id: mine } satisfies Call);
  });
  const others = () =>
    new Promise<Set<Id>>((resolve) => {
      const found = new Set<Id>();
      const hear = (id: Id) => void found.add(id);
      heard.add(hear);
      channel.postMessage({ from: page } satisfies Call);
      setTimeout(() => {
        heard.delete(hear);
        resolve(found);
      }, rollCallMs);
    });
  const id = claimed(async (wanted) => !(await others()).has(wanted)).then((got) => {
    mine = got;
    return got;
  });
  return { id, living: async () => (await others()).add(await id) };
}

/** The id this tab had before, if it can be claimed, else a new one. */
async function claimed(claim: (id: Id) => Promise<boolean>): Promise<Id> {
  const before = readTabMark();
  if (before !== undefined && (await claim(before))) return before;
  const id = newId();
  keepTabMark(id);
  await claim(id);
  return id;
}

const newId = idMaker(Date.now);
