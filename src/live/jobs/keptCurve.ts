import { keptAnswer, type ReadOnlyLogbook } from "#db";
import type { CalendarDate, Figure } from "#domain";
import { type CurveOutlook, type PagePractice, pageCurve } from "#stats";
import { isSound } from "./isSound.ts";
import { levelVersion } from "./levelVersion.ts";

interface KeptCurve {
  /** The day it was drawn for. */
  readonly today: CalendarDate;
  readonly curve: Figure<CurveOutlook>;
}

/** The curve of a combo's page as of today, drawn once a day and after every change of the combo. */
export async function keptCurve(
  book: ReadOnlyLogbook,
  question: PagePractice,
): Promise<Figure<CurveOutlook>> {
  const { comboId, today } = question;
  const isWhole = (answer: unknown): answer is KeptCurve => isCurve(answer) && answer.today === today;
  const { curve } = await keptAnswer(
    book,
    comboId,
    { name: "curve", methodVersion: levelVersion, isWhole },
    async () => ({ today, curve: pageCurve(question) }),
  );
  return curve;
}

/** By what is read of it: the browser may hold anything. */
function isCurve(answer: unknown): answer is KeptCurve {
  const { today, curve } = (answer ?? {}) as Partial<KeptCurve>;
  if (typeof today !== "string" || typeof curve !== "object" || curve === null) return false;
  if (!curve.known) return typeof curve.reason === "object" && curve.reason !== null;
  const { line, ahead, now, levelsOff } = curve.value ?? {};
  const isThere = Array.isArray(line) && Array.isArray(ahead) && typeof now === "object";
  return isThere && typeof levelsOff === "object" && isSound(curve.value);
}
