import { aboutRemark, decimalsOf, type Remark } from "#domain";
import type { TypedLap } from "./context.ts";
import { withRemark } from "./unitOrSpin.ts";
import { wholeTime } from "./wholeTime.ts";

/**
 * A lap as the line that would give it again, for editing in place: "1:23.456 27.1 31.456 24.9 f@5 / wide". The time
 * is written with its minute, so that no usual lap is needed to read it, and with all the decimals its ms have; each
 * sector with the decimals it was typed with.
 */
export function writeEntry({
  ms,
  decimals = 3,
  sectors = [],
  sectorDecimals,
  remarks,
  note,
}: TypedLap): string {
  const times =
    ms === undefined
      ? []
      : [
          wholeTime(ms, Math.max(decimals, decimalsOf(ms))),
          ...sectors.map((sector, place) => sectorOf(sector, sectorDecimals?.[place])),
        ];
  const line = remarks.map(letterOf).reduce(withRemark, times.join(" "));
  return note === undefined ? line : `${line} / ${note}`;
}

/**
 * A sector of a lap that does not say its decimals is written with no more of them than it needs, so that its sum is
 * not checked more closely than it was known; one of whole seconds with its minute, for it needs a point or a colon.
 */
function sectorOf(ms: number, decimals = Math.max(1, decimalsOf(ms))): string {
  const digits = Math.max(decimals, decimalsOf(ms));
  return digits === 0 ? wholeTime(ms, 0) : (ms / 1000).toFixed(digits);
}

function letterOf({ kind, corner }: Remark): string {
  const { letter } = aboutRemark(kind);
  return corner === undefined ? letter : `${letter}@${corner}`;
}
