import { DrillChart } from "#charts/drills/DrillChart.tsx";
import { type CalendarDate, type Id, mondayOf, sayShortDate } from "#domain";
import { useFigures } from "#live";
import type { DrillWeeks } from "#stats";
import { Part } from "#ui/Part.tsx";
import { drillsFollowedSay } from "#words";

interface CornerDrillsProps {
  readonly comboId: Id;
  readonly comboName: string;
  readonly number: number;
  readonly today: CalendarDate;
}

/** The drills that were counted at a corner, week by week, and whether its mistakes and the lap times followed. */
export function CornerDrills({ comboId, comboName, number, today }: CornerDrillsProps) {
  const { value: counted } = useFigures("drills", { comboId, today, corner: number });
  if (counted === undefined || counted.drills.length === 0) return null;
  const { drills, followed } = counted;
  return (
    <Part title="Drills counted there" ruled aside="the last 12 weeks">
      {drills.map((one) => (
        <DrillChart
          key={one.drill}
          told={one}
          rows={weekRows(one, today)}
          asOf={today}
          fileName={`${comboName} corner ${number} ${one.drill}`}
        />
      ))}
      {followed !== undefined &&
        drillsFollowedSay(followed, today).map((sentence) => <p key={sentence}>{sentence}</p>)}
    </Part>
  );
}

function weekRows({ weeks }: DrillWeeks, today: CalendarDate) {
  return weeks.map(({ week, ...of }) => {
    const monday = mondayOf(week);
    return { id: week, name: monday === undefined ? week : `week of ${sayShortDate(monday, today)}`, of };
  });
}
