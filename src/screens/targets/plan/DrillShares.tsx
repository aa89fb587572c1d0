import { percentTicks } from "#charts/axes/percentTicks.ts";
import { RangeRowsChart } from "#charts/rangeRows/RangeRowsChart.tsx";
import { useFigures } from "#live";
import { printAddress } from "#state/address.ts";
import type { DrillWeeks } from "#stats";
import { Part } from "#ui/Part.tsx";
import { drillReading, drillTitle, sayDrill, shareEnds } from "#words";
import styles from "./Plan.module.css";
import type { PlanContext } from "./planContext.ts";

/** How often the drills of the last weeks worked, each on its range; nothing where none was counted. */
export function DrillShares({ context: { combo, today } }: { readonly context: PlanContext }) {
  const { value: counted } = useFigures("drills", { comboId: combo.id, today });
  if (counted === undefined || counted.drills.length === 0) return null;
  const { drills } = counted;
  const [last] = drills;
  return (
    <div className={styles["past"]}>
      <Part title="Drills you counted" ruled aside="the last 12 weeks">
        {last !== undefined && (
          <RangeRowsChart
            title={drillTitle(last)}
            reading={drillReading(last)}
            level={3}
            asOf={today}
            fileName={`${combo.name} drills`}
            rows={drills.map(rowOf)}
            axisTitle="percent of tries; line: very likely range"
            axisOf={(values) => percentTicks(values)}
            say={(percent) => `${Math.round(percent)} %`}
            csvUnit="percent"
          />
        )}
        <ul className={styles["links"]}>
          {cornersOf(drills).map((corner) => (
            <li key={corner}>
              <a href={printAddress({ place: "corners", comboId: combo.id, corner })}>
                Corner {corner}: week by week, and whether laps followed
              </a>
            </li>
          ))}
        </ul>
      </Part>
    </div>
  );
}

function rowOf({ drill, corner, all }: DrillWeeks) {
  const [low, high] = shareEnds(all);
  const name = sayDrill(drill, corner);
  return {
    id: name,
    label: `${name}: ${all.good} of ${all.tries}`,
    value: 100 * all.share,
    low: 100 * all.low,
    high: 100 * all.high,
    ends: [`${low} %`, `${high} %`] as const,
  };
}

const cornersOf = (drills: readonly DrillWeeks[]) => [
  ...new Set(drills.flatMap(({ corner }) => (corner === undefined ? [] : [corner]))),
];
