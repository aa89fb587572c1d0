import { useDeferredValue, useMemo, useState } from "react";
import { aroundImport, importOutlook, type LikelyName, likelyNames, preferences } from "#db";
import { nameKeys, readDate } from "#domain";
import { oddInTable } from "#entry";
import {
  type ColumnKind,
  isColumnKind,
  type KnownNames,
  readLaps,
  readTable,
  type TableForm,
  tableSessions,
  tableSignature,
  type WholeTable,
} from "#files";
import { useLogbook, useRows, useToday } from "#live";
import { keepMatching, matchingOf } from "#state/matchedTables.ts";
import { keyOfLikely, type LikelyAnswer, namesOfTable, underOldNames } from "./likelyAnswers.ts";
import { combosOf, takenFrom } from "./oddOfImport.ts";

const noneLikely: readonly LikelyName[] = [];

/** What the driver typed for rows that have no cell for it. */
export interface WholeTyped {
  readonly car: string;
  readonly track: string;
  readonly date: string;
}

/** Everything between a text and the sessions it would become, renewed with each choice. */
export function useImport(text: string, known: KnownNames) {
  const { surroundings } = useLogbook();
  const chosen = useRows(preferences, []);
  const dayStartsAt = chosen?.dayStartsAt ?? 4;
  const today = useToday({ dayStartsAt });
  const [said, setSaid] = useState<Partial<TableForm>>(() => rememberedForm(text, known));
  const [typed, setTyped] = useState<WholeTyped>({ car: "", track: "", date: "" });
  const wholeNow = useDeferredValue(typed);

  const table = useMemo(() => readTable(text, said, known), [text, said, known]);
  const day = readDate(wholeNow.date);
  const date = day.ok ? day.date : undefined;
  const { car, track } = wholeNow;
  const read = useMemo(
    () => readLaps(table, wholeOf(car, track, date), today),
    [table, car, track, date, today],
  );
  const [answers, setAnswers] = useState<ReadonlyMap<string, LikelyAnswer>>(new Map());
  const names = useMemo(() => namesOfTable(read.laps), [read]);
  const likely = useRows((book) => likelyNames(book, names), [names]) ?? noneLikely;
  const zone = surroundings.zone();
  const { sessions, repeated } = useMemo(
    () =>
      tableSessions(underOldNames(read.laps, likely, answers), {
        zone,
        dayStartsAt,
        newId: surroundings.newId,
      }),
    [read, likely, answers, zone, dayStartsAt, surroundings],
  );
  const combos = useMemo(() => combosOf(sessions), [sessions]);
  const around = useRows((book) => aroundImport(book, combos), [combos]);
  const odd = useMemo(() => {
    const keyOf = nameKeys();
    return oddInTable(
      combos.map(({ track, layout, sessions: own }, index) => ({
        layout: JSON.stringify([track, layout].map(keyOf)),
        sessions: own,
        around: around?.[index],
      })),
    );
  }, [combos, around]);
  const [leavesOdd, setLeavesOdd] = useState(false);
  const taken = useMemo(() => takenFrom(sessions, odd, leavesOdd), [sessions, odd, leavesOdd]);
  const outlook = useRows((book) => importOutlook(book, taken), [taken]);

  return {
    table,
    read,
    sessions: taken,
    repeated,
    /** Laps far from the usual, with what is odd about them; undefined until the book has been asked. */
    odd: around && odd,
    leavesOdd,
    setLeavesOdd,
    outlook,
    likely,
    answers,
    isAsking: likely.some((one) => !answers.has(keyOfLikely(one))),
    answer: (key: string, answer: LikelyAnswer) => setAnswers(new Map(answers).set(key, answer)),
    typed,
    setTyped,
    dateProblem: typed.date.trim() === "" || readDate(typed.date).ok ? undefined : problemOf(typed.date),
    /** Another separator or another first row means other columns. */
    setForm: (patch: Partial<TableForm>) => {
      const { columns: _, ...others } = said;
      setSaid("delimiter" in patch || "hasHeader" in patch ? { ...others, ...patch } : { ...said, ...patch });
    },
    setColumn: (index: number, kind: ColumnKind) =>
      setSaid({ ...said, columns: matched(table.form.columns, index, kind) }),
    /** Keeps what was matched and said, for the next table with the same columns. */
    remember: () => {
      const { dateOrder, decimal, wholeNumbers } = said;
      keepMatching({
        signature: tableSignature(table),
        columns: table.form.columns,
        ...(dateOrder && { dateOrder }),
        ...(decimal && { decimal }),
        ...(wholeNumbers && { wholeNumbers }),
      });
    },
  };
}

function problemOf(date: string) {
  const day = readDate(date);
  return day.ok ? undefined : day.problem;
}

function wholeOf(car: string, track: string, date: string | undefined): WholeTable {
  return { car, track, ...(date === undefined ? {} : { date }) };
}

/** A kind stands over one column only: the column that had it is left out. */
function matched(columns: readonly ColumnKind[], index: number, kind: ColumnKind): ColumnKind[] {
  return columns.map((old, place) => (place === index ? kind : old === kind ? "none" : old));
}

/** What was said of a table with the same columns the last time. */
function rememberedForm(text: string, known: KnownNames): Partial<TableForm> {
  const table = readTable(text, {}, known);
  const old = matchingOf(tableSignature(table));
  if (old === undefined || old.columns.length !== table.width) return {};
  const { dateOrder, decimal, wholeNumbers } = old;
  return {
    columns: old.columns.map((kind) => (isColumnKind(kind) ? kind : "none")),
    ...(dateOrder === "day" || dateOrder === "month" || dateOrder === "year" ? { dateOrder } : {}),
    ...(decimal === "." || decimal === "," ? { decimal } : {}),
    ...(wholeNumbers === "seconds" || wholeNumbers === "milliseconds" ? { wholeNumbers } : {}),
  };
}
