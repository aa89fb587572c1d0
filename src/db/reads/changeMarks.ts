import { type Id, type TableName, tableNames, textMark } from "#domain";
import type { ChangeMark } from "../derived.ts";
import type { ReadOnlyLogbook } from "../logbook.ts";

/**
 * A text that is another one after every change that figures of a combo could come from: of its sessions, runs, laps, pages,
 * targets, reference laps, and of preferences. Reads two small rows; changes to other combos do not wake a live query of it.
 */
export function markOfCombo(book: ReadOnlyLogbook, comboId: Id): Promise<string> {
  return markOfThese(book, [comboId, "preferences"]);
}

/** The same, and of the combo itself and of every other one: what the driver counts on stands in its row. */
export function markOfPractice(book: ReadOnlyLogbook, comboId: Id): Promise<string> {
  return markOfThese(book, [comboId, "preferences", "combos"]);
}

/** What the figures of a combo's corners rest on besides what `markOfCombo` tells of. */
const ofCorners = ["cars", "layouts", "combos", "cornerReviews"] as const satisfies readonly TableName[];

/**
 * A text that is another one after every change that figures of a combo's corners could come from: what `markOfCombo` tells of,
 * its layout, its car, itself, and reviews of corners. Reads six small rows; a change to another layout or car changes it too.
 */
export function markOfCorners(book: ReadOnlyLogbook, comboId: Id): Promise<string> {
  return markOfThese(book, [comboId, "preferences", ...ofCorners]);
}

async function markOfThese(book: ReadOnlyLogbook, ids: readonly string[]): Promise<string> {
  const marks = await book.changeMarks?.bulkGet([...ids]);
  return (marks ?? []).map((row) => row?.mark ?? "never").join(" ");
}

/** A text that is another one whenever `markOfCombo` of any combo is. Reads one small row for each combo. */
export async function markOfAllCombos(book: ReadOnlyLogbook): Promise<string> {
  return joined((await marksIn(book)).filter(({ id }) => isOfCombo(id) || id === "preferences"));
}

/** A text that is another one after every change of any row. Reads one small row for each combo. */
export async function markOfEverything(book: ReadOnlyLogbook): Promise<string> {
  return joined(await marksIn(book));
}

/**
 * A number that is another one whenever a session, a run, a lap, a page, a target or a reference lap is, and says nothing of
 * when. Undefined while the logbook has never held a session.
 */
export async function markOfBook(book: ReadOnlyLogbook): Promise<number | undefined> {
  const [sessions, marks] = await Promise.all([
    book.tables.sessions.orderBy("updatedAt").limit(1).primaryKeys(),
    marksIn(book),
  ]);
  return sessions.length === 0 ? undefined : textMark(joined(marks.filter(({ id }) => isOfCombo(id))));
}

const isOfCombo = (id: string) => !(tableNames as readonly string[]).includes(id);
const marksIn = async (book: ReadOnlyLogbook) => (await book.changeMarks?.toArray()) ?? [];
const joined = (marks: readonly ChangeMark[]) => marks.map(({ mark }) => mark).join(" ");
