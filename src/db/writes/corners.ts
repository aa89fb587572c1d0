import { type Combo, type Corner, fillCorners, type Id } from "#domain";
import type { Logbook } from "../logbook.ts";
import { overwrittenFields, type Patch, patched } from "../patch.ts";
import type { Change } from "./change.ts";
import { liveRows } from "./combos.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

/** What is changed of a corner; of its kerbs each one by itself. */
export type CornerPatch = Patch<Omit<Corner, "number" | "kerbs">> & {
  readonly kerbs?: Patch<NonNullable<Corner["kerbs"]>> | undefined;
};

export interface CornerEdit {
  readonly number: number;
  readonly patch: CornerPatch;
  /** The corner as the driver saw it. */
  readonly expected?: Corner;
  /** Lowest speed seen there with the car of the combo, m/s; undefined takes it out, left out it stays. */
  readonly lowestSpeed?: number | undefined;
}

/** Changes corners of a layout, or adds them, in one go; all others are left alone. */
export function editCorners(
  book: Logbook,
  {
    layoutId,
    comboId,
    corners: edits,
  }: {
    readonly layoutId: Id;
    /** Whose lowest speeds are meant. */
    readonly comboId?: Id;
    readonly corners: readonly CornerEdit[];
  },
): Promise<Change> {
  return write(book, edits.length === 1 ? "Corner not changed" : "Corners not changed", async (writer) => {
    const { corners: before } = await writer.get("layouts", layoutId);
    const corners = new Map(before.map((corner) => [corner.number, corner]));
    const overwrote = new Set<string>();
    for (const { number, patch, expected } of edits) {
      const old = corners.get(number) ?? { number };
      for (const field of overwrittenFields(old, patch, expected)) overwrote.add(field);
      corners.set(number, withPatch(old, patch));
    }
    await writer.patch("layouts", layoutId, {
      corners: [...corners.values()].sort((a, b) => a.number - b.number),
    });
    const speeds = edits.flatMap((edit) =>
      "lowestSpeed" in edit ? [{ number: edit.number, speed: edit.lowestSpeed }] : [],
    );
    if (comboId !== undefined && speeds.length > 0) await setSpeeds(writer, comboId, speeds);
    const [only] = edits;
    const what = edits.length === 1 && only ? `Corner ${only.number}` : `${edits.length} corners`;
    const isNew = edits.every(({ number }) => before.every((corner) => corner.number !== number));
    return changeOf(writer, `${what} ${isNew ? "added" : "changed"}`, [...overwrote]);
  });
}

function withPatch(corner: Corner, { kerbs, ...patch }: CornerPatch): Corner {
  const next = patched<Corner>(corner, patch);
  if (kerbs === undefined) return next;
  const some = patched<NonNullable<Corner["kerbs"]>>(corner.kerbs ?? {}, kerbs);
  return patched<Corner>(next, { kerbs: Object.keys(some).length === 0 ? undefined : some });
}

/** Takes a corner out of a layout, and the lowest speeds that were seen there with every car. */
export function removeCorner(
  book: Logbook,
  { layoutId, number }: { readonly layoutId: Id; readonly number: number },
): Promise<Change> {
  return write(book, "Corner not removed", async (writer) => {
    const { corners } = await writer.get("layouts", layoutId);
    await writer.patch("layouts", layoutId, {
      corners: corners.filter((corner) => corner.number !== number),
    });
    const combos = (await liveRows(writer, "combos")).filter((combo) => combo.layoutId === layoutId);
    for (const { id, lowestSpeeds = [] } of combos)
      if (lowestSpeeds.some((one) => one.number === number))
        await setSpeeds(writer, id, [{ number, speed: undefined }]);
    return changeOf(writer, `Corner ${number} removed`);
  });
}

/** Keeps the lowest speed seen in one corner with one car, m/s; undefined takes it out. Other corners are left alone. */
export function setLowestSpeed(
  book: Logbook,
  {
    comboId,
    number,
    speed,
  }: { readonly comboId: Id; readonly number: number; readonly speed: number | undefined },
): Promise<Change> {
  return write(book, "Lowest speed not stored", async (writer) => {
    await setSpeeds(writer, comboId, [{ number, speed }]);
    return changeOf(writer, `Lowest speed at corner ${number} ${speed === undefined ? "removed" : "stored"}`);
  });
}

async function setSpeeds(
  writer: Writer,
  comboId: Id,
  set: readonly { readonly number: number; readonly speed: number | undefined }[],
): Promise<void> {
  const { lowestSpeeds } = await writer.get("combos", comboId);
  const speeds = new Map((lowestSpeeds ?? []).map(({ number, speed }) => [number, speed]));
  for (const { number, speed } of set)
    if (speed === undefined) speeds.delete(number);
    else speeds.set(number, speed);
  await writer.patch("combos", comboId, { lowestSpeeds: speedsOf(speeds) });
}

/** Lowest speeds of two combos that become one: those of the second only where the first has none. */
export function joinedSpeeds(keep: Combo, drop: Combo): Combo["lowestSpeeds"] {
  const all = [...(drop.lowestSpeeds ?? []), ...(keep.lowestSpeeds ?? [])];
  return speedsOf(new Map(all.map(({ number, speed }) => [number, speed])));
}

function speedsOf(speeds: ReadonlyMap<number, number>): Combo["lowestSpeeds"] {
  if (speeds.size === 0) return undefined;
  return [...speeds].map(([number, speed]) => ({ number, speed })).sort((a, b) => a.number - b.number);
}

/** How corners are copied: in place of all that are there, or only where nothing is known. */
export type CopyHow = "replace" | "fill";

/** Copies the corners of one layout to another. */
export function copyCorners(
  book: Logbook,
  copy: { readonly fromId: Id; readonly layoutId: Id; readonly how: CopyHow },
): Promise<Change> {
  return write(book, "Corners not copied", async (writer) => {
    const from = await writer.get("layouts", copy.fromId);
    const { corners } = await writer.get("layouts", copy.layoutId);
    await writer.patch("layouts", copy.layoutId, {
      corners: copy.how === "replace" ? from.corners : fillCorners(corners, from.corners),
    });
    const { length } = from.corners;
    return changeOf(writer, length === 1 ? "1 corner copied" : `${length} corners copied`);
  });
}
