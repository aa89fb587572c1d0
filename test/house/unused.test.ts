import { parseSync } from "vite";
import { expect, test } from "vitest";
import { readSources, type Source } from "./sources.ts";

/** Exports that nothing in src names, by the reason why they stay. */
const kept: Readonly<Record<string, string>> = {
  "of the public face of the figures, which checks from outside call":
    "fitExponential fitPower horizontalFromVertical lag1Autocorrelation levelChange linearFit pairedTTest",
  "figures and words of forecasts and levels that wait for their screens":
    "personalBestReading sayDifference sayMistakeShare sayScatter",
  "reads and writes that wait for the screens of rig, corners, targets and garage":
    "deletePage editRigTest endRun forecastsOfTarget renameCar renameLayout renameTrack runsOfCombo",
  "the way round the worker and into the store, by which tests ask and look":
    "askHere readDraft readDrafts rowCounts sendHere",
  "by which published values and the round trip are checked":
    "chiSquaredAt chiSquaredCdf compareDates normalAt uniformAt",
};

/** The text without comments, and without what a face only passes on. */
function ownText({ text }: Source): string {
  return text
    .replace(/\/\*[\s\S]*?\*\/|(?<![:"'`])\/\/.*$/gm, "")
    .replace(/export (?:type )?\{[^}]*\} from "[^"]+";/g, "");
}

/** The values that a file exports under their own names. */
function valuesOf({ path, text }: Source): string[] {
  return parseSync(path, text).module.staticExports.flatMap(({ entries }) =>
    entries.flatMap(({ exportName, moduleRequest, isType }) =>
      moduleRequest || isType || exportName.name === null || exportName.name === undefined
        ? []
        : [exportName.name],
    ),
  );
}

/** Exported names that stand once in all the text there is: where they are made. */
function unused(sources: readonly Source[]): string[] {
  const times = new Map<string, number>();
  for (const source of sources)
    for (const [word] of ownText(source).matchAll(/[A-Za-z_$][\w$]*/g))
      times.set(word, (times.get(word) ?? 0) + 1);
  return sources.flatMap(valuesOf).filter((name) => (times.get(name) ?? 0) < 2);
}

const file = (path: string, text: string): Source => ({ path, text, imports: [] });

test("an export that nothing names is found, a passing on and a comment being no use", () => {
  const made = file("a.ts", "/** See lonely. */\nexport const lonely = 1;\nexport function met() {}\n");
  const face = file("index.ts", 'export { lonely, met } from "./a.ts";');
  const user = file("b.ts", 'import { met } from "./index.ts";\nmet(); // lonely');
  expect(unused([made, face, user])).toEqual(["lonely"]);
});

test("nothing is exported that src does not use, but what is kept with a reason", () => {
  const found = unused(readSources("src"));
  expect(found.length).toBeGreaterThan(0);
  expect(found.sort()).toEqual(
    Object.values(kept)
      .flatMap((names) => names.split(" "))
      .sort(),
  );
});
