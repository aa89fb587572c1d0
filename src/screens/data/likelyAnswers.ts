import type { ComboNames, LikelyName } from "#db";
import { sameName } from "#domain";
import type { TableLap } from "#files";

/** What the driver said of a likely name: it is the old one, or a new one. */
export type LikelyAnswer = "old" | "new";

/** A question's key among the others. */
export function keyOfLikely({ kind, name, track = "" }: LikelyName): string {
  return JSON.stringify([kind, name, track]);
}

/** The names of a table, each three once, in the order of the table. */
export function namesOfTable(laps: readonly TableLap[]): ComboNames[] {
  const names = laps.map(
    ({ car, track, layout }) => [JSON.stringify([car, track, layout]), { car, track, layout }] as const,
  );
  return [...new Map(names).values()];
}

/** The laps under the names the driver said they go by. */
export function underOldNames(
  laps: readonly TableLap[],
  likely: readonly LikelyName[],
  answers: ReadonlyMap<string, LikelyAnswer>,
): readonly TableLap[] {
  const said = likely.filter((one) => answers.get(keyOfLikely(one)) === "old");
  if (said.length === 0) return laps;
  const renamed = new Map<string, ComboNames>();
  return laps.map((lap) => {
    const key = JSON.stringify([lap.car, lap.track, lap.layout]);
    const names = renamed.get(key) ?? namesUnder(lap, said);
    renamed.set(key, names);
    return { ...lap, ...names };
  });
}

function namesUnder({ car, track, layout }: ComboNames, said: readonly LikelyName[]): ComboNames {
  const under = (kind: LikelyName["kind"], name: string) =>
    said.find(
      (one) =>
        one.kind === kind &&
        sameName(one.name, name) &&
        (kind !== "layout" || sameName(one.track ?? "", track)),
    )?.old ?? name;
  return { car: under("car", car), track: under("track", track), layout: under("layout", layout) };
}
