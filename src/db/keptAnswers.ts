import type { Id } from "#domain";
import type { ChangeMark, KeptAnswer } from "./derived.ts";
import { faultOf } from "./fault.ts";
import type { Logbook, ReadOnlyLogbook } from "./logbook.ts";
import { newestSchema } from "./migrations/migrations.ts";
import { markOfCombo } from "./reads/changeMarks.ts";

/** A question about a combo whose answer costs long computing. */
export interface Question<A> {
  /** One of few: each has one row a combo, so a day or a typed value belongs into the answer, not into the name. */
  readonly name: string;
  /** An answer computed by another method is stale. */
  readonly methodVersion: string;
  /** Whether what is stored can be used; else it is computed again. */
  readonly isWhole: (answer: unknown) => answer is A;
}

/**
 * The answer kept to a question about a combo, if nothing it could rest on has changed since; else it is computed, and kept
 * where the logbook may be written and the combo has not changed meanwhile.
 * @param compute gives plain data, from nothing but rows of this combo and preferences
 */
export async function keptAnswer<A>(
  book: ReadOnlyLogbook | Logbook,
  comboId: Id,
  question: Question<A>,
  compute: () => Promise<A>,
): Promise<A> {
  const { name, methodVersion, isWhole } = question;
  const id = `${comboId} ${name}`;
  const version = `${newestSchema}/${methodVersion}`;
  const [kept, mark] = await Promise.all([book.keptAnswers?.get(id), markOfCombo(book, comboId)]);
  if (kept?.mark === mark && kept.version === version && isWhole(kept.answer)) return kept.answer;
  const answer = await compute();
  if ("database" in book && book.status.get().kind === "ok")
    await keep(book, comboId, { id, mark, version, answer });
  return answer;
}

async function keep(book: Logbook, comboId: Id, row: KeptAnswer): Promise<void> {
  try {
    await book.database.transaction("rw", ["changeMarks", "keptAnswers"], async (transaction) => {
      if ((await markOfCombo(book, comboId)) !== row.mark) return;
      // What has no mark, from before there were marks or because it was damaged, gets one: no answer is kept under none.
      const marks = transaction.table<ChangeMark, Id>("changeMarks");
      for (const id of [comboId, "preferences"])
        if ((await marks.get(id)) === undefined) await marks.put({ id, mark: book.newId() });
      const mark = await markOfCombo(book, comboId);
      await transaction.table<KeptAnswer, string>("keptAnswers").put({ ...row, mark });
    });
  } catch (error) {
    throw faultOf(error, "Answer not kept");
  }
}
