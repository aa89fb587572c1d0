import { aboutRemark, formatLapTime, type Lap } from "#domain";

/**
 * A stored lap as the text that would be typed for it, for editing in place: "1:23.456 f@5 / missed the apex".
 * Read again with the same layout it gives the same time, decimals, sectors, remarks and note.
 */
export function entryText(lap: Pick<Lap, "ms" | "decimals" | "sectors" | "remarks" | "note">): string {
  const { ms, decimals = 3, sectors = [], remarks, note } = lap;
  const remark = remarks
    .map(({ kind, corner }) => aboutRemark(kind).letter + (corner === undefined ? "" : `@${corner}`))
    .join("");
  return [
    ms === undefined ? "" : formatLapTime(ms, decimals),
    ...sectors.map((sector) => formatLapTime(sector, 3)),
    remark,
    note === undefined ? "" : `/ ${note}`,
  ]
    .filter((part) => part !== "")
    .join(" ");
}
