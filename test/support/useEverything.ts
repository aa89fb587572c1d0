import { pageOf } from "#combo";
import {
  combosWithNames,
  cornerReviewsOfCombo,
  dump,
  forecasts,
  type Logbook,
  mergeRows,
  newestSchema,
  pagesOfCombo,
  partOf,
  preferences,
  recentSessions,
  referencesOfCombo,
  rigs,
  rigTests,
  runsOfSession,
  targetsOfCombo,
  twins,
} from "#db";
import { practiceDay, sayDate, timeOfDay } from "#domain";
import { lapsTable, rigsTable, sessionsTable, targetsTable, writeBackup, writeCsv } from "#files";
import { askHere } from "#live";
import { deletedThings } from "../../src/screens/data/deletedThings.ts";
import { sessionCounts } from "../../src/screens/data/sessionCounts.ts";
import { sessionFigures } from "../../src/screens/log/session/sessionFigures.ts";

const today = "2026-03-10";
const period = {};

/**
 * Uses a logbook as the places of the app do: every read, digest and report, every table to take along, a part to send, a
 * merge with itself, and the words for what is deleted.
 * @returns where a figure that is no number came out, by its path
 */
export async function useEverything(book: Logbook): Promise<string[]> {
  const rows = await dump(book);
  const shown: Record<string, unknown> = {};
  const ofSessions = () => sessionsTable(rows, sessionCounts);
  shown["tables"] = [lapsTable, ofSessions, rigsTable, targetsTable].map((table) =>
    writeCsv(table(rows), { delimiter: ",", decimal: "." }),
  );
  await writeBackup(rows, { title: "Mine", schema: newestSchema, sha256: undefined });
  mergeRows(rows, rows);
  for (const { id } of rows.sessions) partOf(rows, { kind: "session", sessionId: id });
  shown["deleted"] = (await deletedThings(book)).map(({ what, of, deletedAt }) => [
    what,
    of,
    deletedAt === undefined ? "" : sayDate(practiceDay(deletedAt, "Europe/Berlin", 4)),
  ]);
  shown["twins"] = await twins(book);
  shown["rows"] = [await rigTests(book), await forecasts(book)];
  await askHere(book, "freshen", null);
  shown["across"] = await askHere(book, "acrossCombos", { today });
  shown["statement"] = await askHere(book, "statement", { monday: "2026-03-09", today });
  shown["rig"] = await askHere(book, "rigSteps", {
    rigId: "none",
    records: [{ id: "none", from: today }],
    today,
  });
  shown["rig tests"] = await Promise.all(
    (await rigs(book)).map(({ id }) => askHere(book, "rigTests", { rigId: id })),
  );
  shown["search"] = await askHere(book, "search", { terms: { words: "e" }, most: 100 });
  const combos = await combosWithNames(book);
  for (const named of combos) {
    const { id: comboId } = named.combo;
    const by = "2026-05-30";
    shown[`review ${comboId}`] = [
      await askHere(book, "comboReview", { comboId, period, today }),
      await askHere(book, "suggestedTargets", { comboId, kind: "best", by, today }),
      await askHere(book, "targetOutlook", { comboId, kind: "best", value: 82_000, by, today }),
      await cornerReviewsOfCombo(book, comboId),
    ];
  }
  for (const session of await recentSessions(book, 100, Number.MAX_SAFE_INTEGER)) {
    const named = combos.find(({ combo }) => combo.id === session.comboId);
    sayDate(session.date);
    shown[`clock ${session.id}`] = timeOfDay(session.startedAt, session.zone);
    if (named === undefined) continue;
    const pages = await pagesOfCombo(book, session.comboId);
    shown[`session ${session.id}`] = sessionFigures(
      {
        ...named,
        session,
        runs: await runsOfSession(book, session.id),
        unreadableRuns: [],
        preferences: await preferences(book),
        page: pageOf(pages, session.startedAt),
        targets: await targetsOfCombo(book, session.comboId),
        references: await referencesOfCombo(book, session.comboId),
        rigs: await rigs(book),
      },
      undefined,
    );
  }
  return noNumbers(shown, "");
}

/** Paths to values that are not a number. */
function noNumbers(value: unknown, path: string): string[] {
  if (typeof value === "number") return Number.isNaN(value) ? [path] : [];
  if (typeof value === "string") return /\bNaN\b|Invalid Date/.test(value) ? [`${path}: ${value}`] : [];
  if (value instanceof Map) return [...value].flatMap(([key, inner]) => noNumbers(inner, `${path} ${key}`));
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => noNumbers(inner, `${path} ${key}`));
}
