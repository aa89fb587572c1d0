import { keptAnswer, type ReadOnlyLogbook } from "#db";
import { type CalendarDate, type Figure, textMark } from "#domain";
import { type CurveOutlook, levelSettings, methodVersion, type PagePractice, pageCurve } from "#stats";

interface KeptCurve {
  /** The day it was drawn for. */
  readonly today: CalendarDate;
  readonly curve: Figure<CurveOutlook>;
}

/** Other priors, or other digests, and what was drawn before is drawn again. */
const version = `${methodVersion}/${textMark(JSON.stringify(levelSettings))}`;

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
    { name: "curve", methodVersion: version, isWhole },
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

/** Whether every number in it can be shown. */
function isSound(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object" || value === null) return value !== null;
  return Object.values(value).every(isSound);
}
