import type { Lap, Run } from "#domain";
import type { Writer } from "./writer.ts";

/** A layout whose number of sectors is not known has as many as a lap that was written with its sectors. */
export async function rememberSectors(
  writer: Writer,
  run: Run,
  laps: readonly Pick<Lap, "sectors">[],
): Promise<void> {
  const count = laps.find(({ sectors }) => sectors !== undefined)?.sectors?.length ?? 0;
  if (count < 2) return;
  const { layoutId } = await writer.get("combos", run.comboId);
  const layout = await writer.get("layouts", layoutId);
  if (layout.sectors === undefined) await writer.patch("layouts", layoutId, { sectors: count });
}
