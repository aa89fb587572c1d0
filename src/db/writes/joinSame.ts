import { type Car, fillCorners, type Id, type Layout, sameName } from "#domain";
import { LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { liveRows } from "./combos.ts";
import { joinedSpeeds } from "./corners.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

/** Two rows that are the same thing: the second goes into the first. */
export interface Same {
  readonly keepId: Id;
  readonly dropId: Id;
}

const ofCombo = [
  "sessions",
  "runs",
  "pages",
  "references",
  "targets",
  "forecasts",
  "rigTests",
  "cornerReviews",
  "plans",
] as const;

/** Makes one combo of two: all that belongs to the second goes to the first. */
export function joinCombos(book: Logbook, same: Same): Promise<Change> {
  return write(book, "Combos not joined", async (writer) => {
    await joinComboRows(writer, same);
    return changeOf(writer, "Two combos made one");
  });
}

/** Makes one car of two, which then has what was known of either, and one of each two combos that become the same. */
export function joinCars(book: Logbook, same: Same): Promise<Change> {
  return write(book, "Cars not joined", async (writer) => {
    await bothThere(writer, "cars", same);
    await joinCarFacts(writer, same);
    await repoint(writer, same, "carId");
    await writer.remove("cars", same.dropId);
    return changeOf(writer, "Two cars made one");
  });
}

/** Makes one track of two; layouts of the same name become one, and so do combos that become the same. */
export function joinTracks(book: Logbook, same: Same): Promise<Change> {
  return write(book, "Tracks not joined", async (writer) => {
    await bothThere(writer, "tracks", same);
    const layouts = await liveRows(writer, "layouts");
    const kept = layouts.filter(({ trackId }) => trackId === same.keepId);
    for (const layout of layouts.filter(({ trackId }) => trackId === same.dropId)) {
      const twin = kept.find(({ name }) => sameName(name, layout.name));
      if (twin) await joinLayoutRows(writer, twin, layout);
      else await writer.patch("layouts", layout.id, { trackId: same.keepId });
    }
    await writer.remove("tracks", same.dropId);
    return changeOf(writer, "Two tracks made one");
  });
}

/** Makes one layout of two of the same track, and one of each two combos that become the same. */
export function joinLayouts(book: Logbook, same: Same): Promise<Change> {
  return write(book, "Layouts not joined", async (writer) => {
    await bothThere(writer, "layouts", same);
    await joinLayoutRows(
      writer,
      await writer.get("layouts", same.keepId),
      await writer.get("layouts", same.dropId),
    );
    return changeOf(writer, "Two layouts made one");
  });
}

const carFacts = ["width", "grip", "braking", "drive", "topSpeed"] as const satisfies readonly (keyof Car)[];

async function joinCarFacts(writer: Writer, { keepId, dropId }: Same): Promise<void> {
  const [keep, drop] = [await writer.get("cars", keepId), await writer.get("cars", dropId)];
  const missing = carFacts.filter((fact) => keep[fact] === undefined && drop[fact] !== undefined);
  if (missing.length === 0) return;
  await writer.patch("cars", keepId, Object.fromEntries(missing.map((fact) => [fact, drop[fact]])));
}

async function joinLayoutRows(writer: Writer, keep: Layout, drop: Layout): Promise<void> {
  const { sectors, length, corners } = drop;
  await writer.patch("layouts", keep.id, {
    ...(keep.sectors === undefined && sectors !== undefined ? { sectors } : {}),
    ...(keep.length === undefined && length !== undefined ? { length } : {}),
    corners: fillCorners(keep.corners, corners),
  });
  await repoint(writer, { keepId: keep.id, dropId: drop.id }, "layoutId");
  await writer.remove("layouts", drop.id);
}

/** Gives the combos of one car or layout to another; where that makes two the same, they become one. */
async function repoint(writer: Writer, { keepId, dropId }: Same, field: "carId" | "layoutId"): Promise<void> {
  const other = field === "carId" ? "layoutId" : "carId";
  const combos = await liveRows(writer, "combos");
  for (const combo of combos.filter((row) => row[field] === dropId)) {
    const twin = combos.find((row) => row[field] === keepId && row[other] === combo[other]);
    if (twin) await joinComboRows(writer, { keepId: twin.id, dropId: combo.id });
    else await writer.patch("combos", combo.id, { [field]: keepId });
  }
}

async function joinComboRows(writer: Writer, same: Same): Promise<void> {
  await bothThere(writer, "combos", same);
  for (const table of ofCombo) {
    const rows: readonly { readonly id: Id; readonly deletedAt?: number }[] = await writer.transaction
      .table(table)
      .where("comboId")
      .equals(same.dropId)
      .toArray();
    for (const { id, deletedAt } of rows)
      if (deletedAt === undefined) await writer.patch(table, id, { comboId: same.keepId });
  }
  const [keep, drop] = [await writer.get("combos", same.keepId), await writer.get("combos", same.dropId)];
  if (drop.lowestSpeeds !== undefined)
    await writer.patch("combos", keep.id, { lowestSpeeds: joinedSpeeds(keep, drop) });
  if (drop.practice !== undefined)
    await writer.patch("combos", keep.id, { practice: { ...drop.practice, ...keep.practice } });
  await writer.remove("combos", same.dropId);
}

async function bothThere(
  writer: Writer,
  table: "cars" | "tracks" | "layouts" | "combos",
  same: Same,
): Promise<void> {
  if (same.keepId === same.dropId)
    throw new LedgerFault("invalid", "Nothing was changed: choose two different ones.");
  await writer.get(table, same.keepId);
  await writer.get(table, same.dropId);
}
