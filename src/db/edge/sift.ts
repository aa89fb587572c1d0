import { type AsideRow, asideRow } from "#domain";
import { newestSchema } from "../migrations/migrations.ts";
import type { UnreadableRow } from "../unreadable.ts";
import { firstWrong, lapShape, type Shape, shapes } from "./shapes.ts";

type Fields = Readonly<Record<string, unknown>>;

/** What of a stored row can be handed on, and what has to go aside. */
export interface Sifted {
  /** The row, without the laps that cannot be read; undefined where it is none. */
  readonly row: unknown;
  readonly bad: readonly (UnreadableRow & { readonly aside: AsideRow })[];
}

/** Tables whose rows are looked at. */
export function isSifted(table: string): table is keyof typeof shapes {
  return Object.hasOwn(shapes, table);
}

/** Whether a row can be drawn and computed with as it is. Quick: every row that is read goes through it. */
export function isSound(table: keyof typeof shapes, row: unknown): boolean {
  return (
    wrongIn(shapes[table], row) === undefined &&
    hasRightStamps(row) &&
    (table !== "runs" || lapsOf(row).every((lap) => isSoundLap(lap) && hasRightStamps(lap)))
  );
}

/** Sorts out what is wrong in a row: all of it, or some laps of a run. */
export function sift(table: keyof typeof shapes, row: unknown): Sifted {
  const fields = (typeof row === "object" && row !== null ? row : { value: row }) as Fields;
  const key = fields[table === "digests" ? "sessionId" : "id"];
  const wrong = wrongIn(shapes[table], row);
  if (wrong !== undefined) {
    const aside = asideRow(table, fields, wrong, newestSchema);
    return { row: undefined, bad: [{ table, id: String(key), key, aside }] };
  }
  const right = withRightStamps(fields);
  if (table !== "runs") return { row: right, bad: [] };
  const laps = lapsOf(row);
  const bad = laps.flatMap((lap, index) => {
    if (isSoundLap(lap)) return [];
    const held = (typeof lap === "object" && lap !== null ? lap : { value: lap }) as Fields;
    const aside = asideRow("laps", { ...held, runId: key }, wrongInLap(lap) ?? "", newestSchema);
    return [{ table: "laps", id: `${key} ${index}`, key, aside }];
  });
  return { row: { ...right, laps: (laps.filter(isSoundLap) as Fields[]).map(withRightStamps) }, bad };
}

const isStamps = (value: unknown) =>
  value === undefined || (Array.isArray(value) && value.every(Number.isFinite));
const hasRightStamps = (row: unknown) => {
  const { had, disproved } = row as Fields;
  return isStamps(had) && isStamps(disproved);
};

/**
 * A row without the stamps it had where they cannot be right: the app alone writes them, and without them a merge goes by the
 * later stamp, which is better than losing the row.
 */
function withRightStamps({ had, disproved, ...row }: Fields): Fields {
  return {
    ...row,
    ...(had !== undefined && isStamps(had) && { had }),
    ...(disproved !== undefined && isStamps(disproved) && { disproved }),
  };
}

const lapsOf = (row: unknown) => (row as { readonly laps: readonly unknown[] }).laps;
const isSoundLap = (lap: unknown) => wrongInLap(lap) === undefined;

function wrongInLap(lap: unknown): string | undefined {
  const wrong = wrongIn(lapShape, lap);
  if (wrong !== undefined) return wrong;
  const { ms, decimals } = lap as Fields;
  return (ms === undefined) === (decimals === undefined)
    ? undefined
    : "decimals: they stand where a time stands, and only there";
}

function wrongIn(shape: Shape, row: unknown): string | undefined {
  return typeof row === "object" && row !== null ? firstWrong(shape, row as Fields) : "not a row";
}
