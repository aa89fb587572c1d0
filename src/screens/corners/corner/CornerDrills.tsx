import { percentTicks } from "#charts/axes/percentTicks.ts";
import { RangeRowsChart } from "#charts/rangeRows/RangeRowsChart.tsx";
import { type CalendarDate, type Id, mondayOf, sayShortDate } from "#domain";
import { useFigures } from "#live";
import type { DrillWeeks } from "#stats";
import { Part } from "#ui/Part.tsx";
import { drillReading, drillsFollowedSay, drillTitle, shareEnds } from "#words";

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
        <RangeRowsChart
          key={one.drill}
          title={drillTitle(one)}
          reading={drillReading(one)}
          level={3}
          asOf={today}
          fileName={`${comboName} corner ${number} ${one.drill}`}
          rows={weekRows(one, today)}
          axisTitle="percent of tries; line: very likely range"
          axisOf={(values) => percentTicks(values)}
          say={(percent) => `${Math.round(percent)} %`}
          csvUnit="percent"
        />
      ))}
      {followed !== undefined &&
        drillsFollowedSay(followed, today).map((sentence) => <p key={sentence}>{sentence}</p>)}
    </Part>
  );
}

function weekRows({ weeks }: DrillWeeks, today: CalendarDate) {
  return weeks.map(({ week, good, tries, share, low, high }) => {
    const monday = mondayOf(week);
    const from = monday === undefined ? week : `week of ${sayShortDate(monday, today)}`;
    const [least, most] = shareEnds({ low, high });
    return {
      id: week,
      label: `${from}: ${good} of ${tries}`,
      value: 100 * share,
      low: 100 * low,
      high: 100 * high,
      ends: [`${least} %`, `${most} %`] as const,
    };
  });
}
