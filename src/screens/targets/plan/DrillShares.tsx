import { DrillChart } from "#charts/drills/DrillChart.tsx";
import { useFigures } from "#live";
import { printAddress } from "#state/address.ts";
import type { DrillWeeks } from "#stats";
import { Part } from "#ui/Part.tsx";
import { sayDrill } from "#words";
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
          <DrillChart told={last} rows={drills.map(rowOf)} asOf={today} fileName={`${combo.name} drills`} />
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
  const name = sayDrill(drill, corner);
  return { id: name, name, of: all };
}

const cornersOf = (drills: readonly DrillWeeks[]) => [
  ...new Set(drills.flatMap(({ corner }) => (corner === undefined ? [] : [corner]))),
];
