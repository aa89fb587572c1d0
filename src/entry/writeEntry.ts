import { aboutRemark, decimalsOf, type Remark } from "#domain";
import type { TypedLap } from "./context.ts";
import { withRemark } from "./unitOrSpin.ts";
import { wholeTime } from "./wholeTime.ts";

/**
 * A lap as the line that would give it again, for editing in place: "1:23.456 27.1 31.456 24.9 f@5 / wide". The time
 * is written with its minute, so that no usual lap is needed to read it, and with all the decimals its ms have.
 */
export function writeEntry({ ms, decimals = 3, sectors = [], remarks, note }: TypedLap): string {
  const times =
    ms === undefined
      ? []
      : [wholeTime(ms, Math.max(decimals, decimalsOf(ms))), ...sectors.map((sector) => secondsOf(sector))];
  const line = remarks.map(letterOf).reduce(withRemark, times.join(" "));
  return note === undefined ? line : `${line} / ${note}`;
}

function secondsOf(ms: number): string {
  return (ms / 1000).toFixed(Math.max(1, decimalsOf(ms)));
}

function letterOf({ kind, corner }: Remark): string {
  const { letter } = aboutRemark(kind);
  return corner === undefined ? letter : `${letter}@${corner}`;
}
