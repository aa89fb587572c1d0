import { type Draft, draftsAbout, draftsFrom, type Shelf, takeOverDraft } from "#db";
import type { Tab } from "./browserTab.ts";
import { draftsSettled } from "./keepDraft.ts";

/** What is typed about something: in this tab, and by tabs that are gone. */
export interface FoundDrafts {
  readonly mine: Draft | undefined;
  /** Never what another tab that is open holds. */
  readonly left: readonly Draft[];
}

/**
 * Finds what was typed about one thing. Where this is the only tab and one other left something behind, the driver has
 * come back to it after a closed tab, a crash or a flat battery: it becomes this tab's at once, without a question.
 * @param mayTakeOver asked last: false once the driver has typed something here
 */
export async function findDrafts(
  shelf: Shelf,
  tab: Tab,
  about: string,
  mayTakeOver: () => boolean,
): Promise<FoundDrafts> {
  const [id, rows] = await Promise.all([tab.id, draftsAbout(shelf, about)]);
  const mine = rows.find((row) => row.tab === id);
  if (rows.every((row) => row === mine)) return { mine, left: [] };
  const living = await tab.living();
  const left = rows.filter((row) => isLeft(row, living));
  const [only] = left;
  const isBack = mine === undefined && living.size <= 1 && left.length === 1;
  if (only === undefined || !isBack || !mayTakeOver()) return { mine, left };
  const taken = await takeOverDraft(shelf, only, id);
  return taken === undefined ? findDrafts(shelf, tab, about, () => false) : { mine: taken, left: [] };
}

/** What was typed in this tab and in tabs that are gone, about all things whose key begins so. */
export async function findDraftsFrom(
  shelf: Shelf,
  tab: Tab,
  beginning: string,
): Promise<readonly { readonly row: Draft; readonly isMine: boolean }[]> {
  await draftsSettled(beginning);
  const [id, rows] = await Promise.all([tab.id, draftsFrom(shelf, beginning)]);
  const living = rows.every((row) => row.tab === id) ? new Set<string>() : await tab.living();
  return rows
    .map((row) => ({ row, isMine: row.tab === id }))
    .filter(({ row, isMine }) => isMine || isLeft(row, living));
}

const isLeft = ({ tab }: Draft, living: ReadonlySet<string>) => tab === undefined || !living.has(tab);
