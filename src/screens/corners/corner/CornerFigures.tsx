import { sayDate } from "#domain";
import type { UnusedRoad } from "#stats";
import { FigureRow } from "#ui/FigureRow.tsx";
import { sayMetres, sayRange } from "#words";

/** Seconds, km/h and metres given away at a corner, each with its range. */
export function CornerFigures({ unused }: { readonly unused: UnusedRoad }) {
  const { ms, speed, gaps, on } = unused;
  const metres = [gaps.entry, gaps.apex, gaps.exit].map((gap) => Math.max(0, gap ?? 0));
  const all = metres.reduce((sum, gap) => sum + gap, 0);
  return (
    <FigureRow
      figures={[
        { label: "seconds a lap", value: (ms.mid / 1000).toFixed(2), detail: sayRange(ms) },
        {
          label: "km/h at the exit",
          value: Math.max(0, speed.mid).toFixed(0),
          detail: `${Math.max(0, speed.low).toFixed(0)} to ${Math.max(0, speed.high).toFixed(0)}`,
        },
        { label: "road left, in all", value: sayMetres(all), detail: `seen on ${sayDate(on)}` },
      ]}
    />
  );
}
