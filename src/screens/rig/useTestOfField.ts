import { type RigSettings, rigValue } from "#domain";
import { useFigures } from "#live";
import { saidSides, sayPutBackOn } from "#words";

type Values = Parameters<typeof rigValue>[0];

/**
 * Says of a value of the rig that is about to change that a test of it is under way, and its A is then no longer on.
 * @returns the sentence by the name of the value; undefined where there is nothing to say
 */
export function useTestOfField(
  before: RigSettings | undefined,
  typed: Values | undefined,
): (field: string) => string | undefined {
  const { value: pages = [] } = useFigures("rigTestPages", {});
  return (field) => {
    if (typed === undefined) return undefined;
    const value = rigValue(typed, field);
    if (before !== undefined && rigValue(before, field) === value) return undefined;
    const under = pages.find(
      ({ test, report }) => !report.isOver && test.field === field && test.valueA !== undefined,
    );
    if (under === undefined || under.test.valueA === value) return undefined;
    return sayPutBackOn(saidSides(under.test, under.records));
  };
}
