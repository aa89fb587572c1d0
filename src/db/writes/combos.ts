import { type Combo, type Id, sameName, type TableName, type Tables } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { nameFrom } from "./rowsOf.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

/** One that is there, or one by name; a name that means an old one is the old one. */
export type Named = { readonly id: Id } | { readonly name: string };

export interface NewCombo {
  readonly car: Named;
  readonly track: Named;
  /** Without it, the track's only layout, which has an empty name. */
  readonly layout?: Named;
  readonly sectors?: number;
}

/** A combo that is there, or one by the names that mean it, made with the rest of the write where it is new. */
export type AskedCombo = { readonly comboId: Id } | { readonly combo: NewCombo };

/** Rows of a small table that are not deleted. */
export async function liveRows<T extends TableName>(writer: Writer, table: T): Promise<Tables[T][]> {
  const rows: Tables[T][] = await writer.transaction.table(table).toArray();
  return rows.filter(({ deletedAt }) => deletedAt === undefined);
}

/** Makes a combo, and its car, track and layout where they are new; one that is there is found again. */
export function addCombo(book: Logbook, combo: NewCombo): Promise<Change & { readonly comboId: Id }> {
  return write(book, "Combo not stored", async (writer) => {
    const { comboId, isNew } = await comboNamed(writer, combo);
    return { ...changeOf(writer, isNew ? "Combo added" : "Combo already there"), comboId };
  });
}

/** The combo that these names mean, made inside a write where it is new. */
export async function comboNamed(
  writer: Writer,
  combo: NewCombo,
): Promise<{ readonly comboId: Id; readonly isNew: boolean }> {
  const carId = await carOrTrack(writer, "cars", combo.car);
  const trackId = await carOrTrack(writer, "tracks", combo.track);
  const layoutId = await layoutOf(writer, trackId, combo);
  const isSame = (row: Combo) => row.carId === carId && row.layoutId === layoutId;
  const known = (await liveRows(writer, "combos")).find(isSame);
  const { id: comboId } = known ?? (await writer.add("combos", { carId, layoutId }));
  return { comboId, isNew: known === undefined };
}

/** The id of a combo that is asked for; one by its names is made where it is new. */
export async function comboAsked(writer: Writer, asked: AskedCombo): Promise<Id> {
  return "comboId" in asked
    ? (await writer.get("combos", asked.comboId)).id
    : (await comboNamed(writer, asked.combo)).comboId;
}

async function carOrTrack(writer: Writer, table: "cars" | "tracks", named: Named): Promise<Id> {
  if ("id" in named) return (await writer.get(table, named.id)).id;
  const name = nameFrom(named.name, table === "cars" ? "car" : "track");
  const known = (await liveRows(writer, table)).find((row) => sameName(row.name, name));
  return (known ?? (await writer.add(table, { name }))).id;
}

async function layoutOf(writer: Writer, trackId: Id, { layout, sectors }: NewCombo): Promise<Id> {
  if (layout && "id" in layout) return (await writer.get("layouts", layout.id)).id;
  const name = layout?.name.trim() ?? "";
  const known = (await liveRows(writer, "layouts")).find(
    (row) => row.trackId === trackId && sameName(row.name, name),
  );
  if (known) return known.id;
  const fields = { trackId, name, corners: [] };
  return (await writer.add("layouts", sectors === undefined ? fields : { ...fields, sectors })).id;
}
