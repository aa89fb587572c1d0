import { type Figure, type FormReading, known, type RigSettings, rigRanges } from "#domain";
import { type Measure, readMeasure, writeMeasure } from "#entry";
import {
  type ForceSeen,
  firstGain,
  forceSketch,
  type GainRange,
  gainForPeak,
  gainForShare,
  mostShare,
  type ShareRange,
  shareAtGain,
} from "#physics";
import { gainDigits } from "#words";

/** What was seen of the force: how strong it got, or how long it was at the limit. */
export type GainWay = "peak" | "share";

export type GainFigure = "gain" | "peak" | "reserve" | "share" | "wanted" | "chosen" | "torque" | "rimRadius";

const { wheel } = rigRanges;
const percent = { unit: "%", least: 0 } as const;

/** Every figure of the sum, as it is typed. Peak and shares take more than can be reckoned with, which is then explained. */
export const gainMeasures: Readonly<Record<GainFigure, Measure>> = {
  gain: { name: "Gain now", unit: "%", ...wheel.gainPercent },
  peak: { name: "Peak seen", ...percent, most: 1000 },
  reserve: { name: "Reserve", ...percent, most: 100 },
  share: { name: "At the limit", ...percent, most: 100 },
  wanted: { name: "Wanted there", ...percent, most: 100 },
  chosen: { name: "Gain to store", unit: "%", ...wheel.gainPercent },
  torque: { name: "Torque at most", unit: "N·m", ...wheel.torque },
  rimRadius: {
    name: "Radius of the rim",
    unit: "cm",
    stored: 0.01,
    least: wheel.rimRadius.least * 100,
    most: wheel.rimRadius.most * 100,
  },
};

/** The sum as it is typed. */
export type GainTexts = Readonly<Record<GainFigure, string>> & { readonly way: GainWay };

/** What can be read of it so far; absent where nothing stands or what stands cannot be read. */
export type GainValues = Readonly<Partial<Record<GainFigure, number>>>;

/** Figures that one way asks for. */
const askedBy = {
  peak: ["gain", "peak", "reserve"],
  share: ["gain", "share", "wanted"],
} as const satisfies Readonly<Record<GainWay, readonly GainFigure[]>>;

/** What stands in the fields before anything is typed: the record in force, a tenth of reserve, one percent of the time. */
export function gainTextsFrom(rig: RigSettings | undefined): GainTexts {
  const { gainPercent, torque, rimRadius } = rig?.wheel ?? {};
  return {
    way: "peak",
    gain: writeMeasure(gainPercent, gainMeasures.gain),
    peak: "",
    reserve: "10",
    share: "",
    wanted: "1",
    chosen: "",
    torque: writeMeasure(torque, gainMeasures.torque),
    rimRadius: writeMeasure(rimRadius, gainMeasures.rimRadius),
  };
}

/** Reads all figures; those of the way that was not chosen are no problem, whatever they say. */
export function readGainTexts(
  texts: GainTexts,
): FormReading<GainValues, GainFigure> & { values: GainValues } {
  const other: readonly GainFigure[] = askedBy[texts.way === "peak" ? "share" : "peak"];
  const asked = (Object.keys(gainMeasures) as GainFigure[]).filter(
    (key) => key === "gain" || !other.includes(key),
  );
  const read = asked.map((key) => [key, readMeasure(texts[key], gainMeasures[key])] as const);
  const values: GainValues = Object.fromEntries(
    read.flatMap(([key, one]) => (one.ok && one.value !== undefined ? [[key, one.value]] : [])),
  );
  const problems = Object.fromEntries(read.flatMap(([key, one]) => (one.ok ? [] : [[key, one.problem]])));
  return Object.keys(problems).length === 0
    ? { ok: true, value: values, values }
    : { ok: false, problems, values };
}

/** The first figure that a way asks for and that is not there, or cannot be read. */
export function missingFigure(way: GainWay, values: GainValues) {
  return askedBy[way].find((key) => values[key] === undefined);
}

/** The gain that follows, or why none does; undefined while a figure for it is missing. */
export function workOutGain(way: GainWay, values: GainValues): Figure<GainRange> | undefined {
  const { gain, peak, reserve, share, wanted } = values;
  if (gain === undefined) return undefined;
  if (way === "peak") {
    if (peak === undefined || reserve === undefined) return undefined;
    const found = gainForPeak({ gain, peak, reserve: reserve / 100 });
    return typeof found === "number" ? known({ low: found, high: found }) : found;
  }
  if (share === undefined || wanted === undefined) return undefined;
  const found = gainForShare({ gain, share: share / 100, wanted: wanted / 100 });
  return found.known ? known(found.value) : found;
}

/** The first of the small steps to a range, as it is offered for storing. */
export function offeredGain(now: number, range: GainRange): string {
  return gainDigits(firstGain(now, range));
}

/** What can be drawn of the force: undefined while nothing was seen, and where the peak itself is cut off. */
export function forceSeen(way: GainWay, { peak, share }: GainValues): ForceSeen | undefined {
  if (way === "peak") return peak === undefined || peak <= 0 || peak >= 100 ? undefined : { peak };
  return share === undefined || share <= 0 || share >= 100 * mostShare ? undefined : { share: share / 100 };
}

/**
 * The turn that is drawn at a gain. A peak grows with the gain. A share of time tells nothing of how strong the forces over
 * the limit are, so that the turn shows as much over it as is typical at that gain: what the sum itself reckons with.
 * @param gain in percent, at which the force was seen; next, in percent, at which it is drawn
 */
export function turnAtGain(
  seen: ForceSeen,
  gain: number,
  next: number,
): { readonly forces: readonly number[]; readonly time?: ShareRange } {
  if ("peak" in seen) return { forces: forceSketch({ peak: (seen.peak * next) / gain }) };
  if (next === gain) return { forces: forceSketch(seen) };
  const time = shareAtGain({ gain, share: seen.share, next });
  return { forces: forceSketch({ share: Math.sqrt(time.low * time.high) }), time };
}
