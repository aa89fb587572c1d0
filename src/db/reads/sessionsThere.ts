import { type CalendarDate, type Id, lapsInOrder, nameKeys, sameName } from "#domain";
import { type ImportedSession, newPart, type SessionThere } from "../importedSession.ts";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { type ComboWithNames, combosWithNames } from "./combos.ts";
import { type RunsToJudgeBy, runsToJudgeComboBy } from "./runsToJudgeBy.ts";
import { runsOfSession, sessionsOfCombo } from "./sessions.ts";

/** The sessions of a combo on a date with their laps, guests' laps too. */
export async function sessionsThere(
  book: ReadOnlyLogbook,
  comboId: Id,
  date: CalendarDate,
): Promise<SessionThere[]> {
  const sessions = (await sessionsOfCombo(book, comboId)).filter((session) => session.date === date);
  return Promise.all(
    sessions.map(async ({ id }) => ({ id, laps: (await runsOfSession(book, id)).flatMap(lapsInOrder) })),
  );
}

function isOn({ track, layout }: ComboWithNames, session: ComboNames): boolean {
  return sameName(track.name, session.track) && sameName(layout.name, session.layout);
}

type ComboNames = Pick<ImportedSession, "car" | "track" | "layout">;

/** Runs in the book that laps of a table can be judged by, and the layout's length. */
export interface AroundImport extends RunsToJudgeBy {
  readonly lengthMetres: number | undefined;
}

/** The same for each combo named, in the order given: a few runs each, however long the history is. */
export async function aroundImport(
  book: ReadOnlyLogbook,
  combos: readonly ComboNames[],
): Promise<AroundImport[]> {
  const there = await combosWithNames(book);
  return Promise.all(
    combos.map(async (names) => {
      const onLayout = there.filter((one) => isOn(one, names));
      const layout = onLayout[0]?.layout;
      const comboId = onLayout.find(({ car }) => sameName(car.name, names.car))?.combo.id;
      const runs = await runsToJudgeComboBy(book, { comboId, layoutId: layout?.id });
      return { ...runs, lengthMetres: layout?.length };
    }),
  );
}

export interface ImportOutlook {
  /** Laps that are there already, by the id of the imported session. */
  readonly known: ReadonlyMap<Id, number>;
  /** Names that would be made. */
  readonly newCars: readonly string[];
  readonly newTracks: readonly string[];
}

/** What importing these sessions would find there and make anew. Reads the sessions of their combos only. */
export async function importOutlook(
  book: ReadOnlyLogbook,
  sessions: readonly ImportedSession[],
): Promise<ImportOutlook> {
  const combos = await combosWithNames(book);
  const [cars, tracks] = await Promise.all([book.tables.cars.toArray(), book.tables.tracks.toArray()]);
  const keyOf = nameKeys();
  const keyOfNames = (car: string, track: string, layout: string) =>
    [car, track, layout].map(keyOf).join(" ");
  const comboIds = new Map(
    combos.map(({ combo, car, track, layout }) => [keyOfNames(car.name, track.name, layout.name), combo.id]),
  );
  const known = new Map<Id, number>();
  for (const session of sessions) {
    const comboId = comboIds.get(keyOfNames(session.car, session.track, session.layout));
    if (comboId === undefined) continue;
    const part = newPart(session, await sessionsThere(book, comboId, session.date));
    if (part.known > 0) known.set(session.id, part.known);
  }
  const missing = (
    names: readonly string[],
    rows: readonly { readonly name: string; readonly deletedAt?: number }[],
  ) => {
    const met = new Set(
      rows.filter(({ deletedAt }) => deletedAt === undefined).map(({ name }) => keyOf(name)),
    );
    return names.filter((name) => {
      const isNew = !met.has(keyOf(name));
      met.add(keyOf(name));
      return isNew;
    });
  };
  return {
    known,
    newCars: missing(
      sessions.map(({ car }) => car),
      cars,
    ),
    newTracks: missing(
      sessions.map(({ track }) => track),
      tracks,
    ),
  };
}
