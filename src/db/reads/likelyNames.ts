import { nameKeys } from "#domain";
import type { ImportedSession } from "../importedSession.ts";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { namingRows } from "./namingRows.ts";
import { isLive } from "./ranges.ts";

export type ComboNames = Pick<ImportedSession, "car" | "track" | "layout">;

/** A name that is not in the book, and one it may be meant for. */
export interface LikelyName {
  readonly kind: "car" | "track" | "layout";
  readonly name: string;
  readonly old: string;
  /** The track a layout is of. */
  readonly track?: string;
}

/**
 * Which of these names are likely meant for one in the book, or for one before them in the list: they differ in accents
 * only. Each name is there once; one that is the same as a known name is not there.
 */
export async function likelyNames(
  book: ReadOnlyLogbook,
  names: readonly ComboNames[],
): Promise<LikelyName[]> {
  const { carRows, trackRows, layoutRows, trackOf } = await namingRows(book);
  const [sameKey, likelyKey] = [nameKeys("same"), nameKeys("likely")];
  const known = new Map<string, string>();
  const found: LikelyName[] = [];
  /** Takes up a name; gives the one it is likely meant for, unless the same is known. */
  const meet = (kind: LikelyName["kind"], name: string, track = ""): string | undefined => {
    const same = `same ${kind} ${sameKey(track)} ${sameKey(name)}`;
    const likely = `likely ${kind} ${sameKey(track)} ${likelyKey(name)}`;
    const old = known.has(same) ? undefined : known.get(likely);
    known.set(same, name);
    if (!known.has(likely)) known.set(likely, name);
    return old;
  };
  const ask = (kind: LikelyName["kind"], name: string, track?: string) => {
    const old = meet(kind, name, track);
    if (old !== undefined) found.push({ kind, name, old, ...(track === undefined ? {} : { track }) });
  };
  for (const { name } of carRows.filter(isLive)) meet("car", name);
  for (const { name } of trackRows.filter(isLive)) meet("track", name);
  for (const { trackId, name } of layoutRows.filter(isLive))
    meet("layout", name, trackOf.get(trackId)?.name ?? "");
  for (const { car, track, layout } of names) {
    ask("car", car);
    ask("track", track);
    ask("layout", layout, track);
  }
  return found;
}
