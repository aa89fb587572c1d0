import { type CalendarDate, type Drill, type DrillCount, type WeekName, weekName } from "#domain";
import { CONFIDENCE } from "#numbers";
import { type Share, wilsonInterval } from "../sample/wilsonInterval.ts";

/** What was counted of drills on a day. */
export interface CountedDay {
  readonly date: CalendarDate;
  readonly counts: readonly DrillCount[];
}

/** One drill at one corner, or of the whole lap, over the weeks it was counted in. */
export interface DrillWeeks {
  readonly drill: Drill;
  readonly corner: number | undefined;
  /** In time order; only weeks with tries. */
  readonly weeks: readonly (Share & {
    readonly week: WeekName;
    readonly good: number;
    readonly tries: number;
  })[];
  /** Of all of them together. */
  readonly all: Share & { readonly good: number; readonly tries: number };
}

/**
 * How often the tries of each drill worked, week by week, with Wilson's 90 % score interval (Wilson 1927). Those counted last
 * come first.
 * @param days in any order
 */
export function drillWeeks(days: readonly CountedDay[]): DrillWeeks[] {
  const found = new Map<string, { drill: Drill; corner: number | undefined; byWeek: Map<WeekName, Tally> }>();
  for (const { date, counts } of days.toSorted((a, b) => (a.date < b.date ? -1 : 1)))
    for (const { drill, corner, tries, good } of counts) {
      if (tries === 0) continue;
      const key = `${drill} ${corner ?? ""}`;
      const one = found.get(key) ?? { drill, corner, byWeek: new Map<WeekName, Tally>() };
      // The one counted last is put in last.
      found.delete(key);
      found.set(key, one);
      const week = weekName(date);
      const before = one.byWeek.get(week) ?? { good: 0, tries: 0 };
      one.byWeek.set(week, { good: before.good + good, tries: before.tries + tries });
    }
  return [...found.values()].reverse().map(({ drill, corner, byWeek }) => {
    const weeks = [...byWeek].map(([week, tally]) => ({ week, ...shareOf(tally) }));
    const all = [...byWeek.values()].reduce(
      (sum, { good, tries }) => ({ good: sum.good + good, tries: sum.tries + tries }),
      { good: 0, tries: 0 },
    );
    return { drill, corner, weeks, all: shareOf(all) };
  });
}

interface Tally {
  readonly good: number;
  readonly tries: number;
}

function shareOf({ good, tries }: Tally) {
  const share = wilsonInterval(good, tries, CONFIDENCE) as Share;
  return { good, tries, ...share };
}
