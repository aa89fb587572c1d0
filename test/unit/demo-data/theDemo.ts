import { readFileSync } from "node:fs";
import { checkRows } from "#db";
import type { AllRows, Run } from "#domain";
import { type ComboReview, type ComboReviewInput, comboReview, sessionDigest } from "#stats";
import type { ComboKey } from "../../../demo-data/combos.ts";
import type { Truth } from "../../../demo-data/truth.ts";

const textOf = (name: string) => readFileSync(new URL(`../../../demo-data/${name}`, import.meta.url), "utf8");

/** The committed demo logbook, as text. */
export const logbookText = textOf("demo-logbook.json");
/** What the generator says is true of it, as text and as read. */
export const truthText = textOf("truth.json");
/** What the first page draws of it, as text. */
export const pictureText = textOf("picture.json");
export const truth = JSON.parse(truthText) as Truth;

const checked = checkRows(
  (JSON.parse(logbookText) as { readonly tables: Readonly<Record<string, readonly unknown[]>> }).tables,
);
export const { bad } = checked;
export const rows: AllRows = checked.rows;

/** The runs of a combo or of a session, in order of time. */
export function runsOf(id: string): Run[] {
  return rows.runs
    .filter(({ comboId, sessionId }) => comboId === id || sessionId === id)
    .sort((a, b) => a.startedAt - b.startedAt || a.n - b.n);
}

const [chosen] = rows.preferences;
if (chosen === undefined) throw new RangeError("the demo has no preferences");
export const preferences = chosen;

/** What belongs to a combo, its sessions as figures. */
export function comboOf(key: ComboKey) {
  const { comboId } = truth.combos[key];
  const isOwn = (row: { readonly comboId: string }) => row.comboId === comboId;
  return {
    comboId,
    digests: rows.sessions
      .filter(isOwn)
      .map((session) => sessionDigest(session, runsOf(session.id), preferences)),
    pages: rows.pages.filter(isOwn),
    targets: rows.targets.filter(isOwn),
    references: rows.references.filter(isOwn),
  };
}

/** The app's own reading of a combo at the end of the twelve weeks. */
export function reviewOf(key: ComboKey, period: ComboReviewInput["period"] = {}): ComboReview {
  return comboReview({ ...comboOf(key), period, today: truth.lastDay, preferences });
}
