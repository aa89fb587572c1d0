import type { ComboWithNames, NewCombo } from "#db";
import { type Car, type Id, layoutName, likelyTwin, sameName, type Track } from "#domain";
import type { ComboboxOption } from "#ui/matchOptions.ts";

const longestName = 120;

/** What can be picked: each car and each track layout once, those driven last first. */
export interface Names {
  readonly cars: readonly ComboboxOption[];
  readonly layouts: readonly ComboboxOption[];
  readonly tracks: readonly Track[];
}

const once = <T>(all: readonly T[], idOf: (one: T) => Id) => [
  ...new Map(all.map((one) => [idOf(one), one])).values(),
];

export function namesOf(combos: readonly ComboWithNames[]): Names {
  return {
    cars: once<Car>(
      combos.map(({ car }) => car),
      ({ id }) => id,
    ).map(({ id, name }) => ({ id, label: name })),
    layouts: once(combos, ({ layout }) => layout.id).map(({ track, layout }) => ({
      id: layout.id,
      label: layoutName(track, layout),
    })),
    tracks: once<Track>(
      combos.map(({ track }) => track),
      ({ id }) => id,
    ),
  };
}

/** The layouts there are, and, for a known track with something behind its name, a new layout of it. */
export function trackOptions({ layouts, tracks }: Names, text: string): readonly ComboboxOption[] {
  const made = tracks.flatMap((track) => {
    const rest = text.trim().slice(track.name.length);
    const isLonger = sameName(text.trim().slice(0, track.name.length), track.name) && /^[\s,]+\S/.test(rest);
    if (!isLonger) return [];
    const label = `${track.name}, ${rest.replace(/^[\s,]+/, "").trim()}`;
    return layouts.some((known) => sameName(known.label, label))
      ? []
      : [{ id: `new ${track.id}`, label, detail: `new layout of ${track.name}` }];
  });
  return [...layouts, ...made];
}

/** The combo that two names mean: one that is there, or what has to be made. A comma sets off the layout's name. */
export function pickedCombo(
  car: string,
  track: string,
  combos: readonly ComboWithNames[],
): { readonly comboId: Id } | { readonly combo: NewCombo } {
  const isTrack = (one: ComboWithNames) => sameName(layoutName(one.track, one.layout), track);
  const isCar = (one: ComboWithNames) => sameName(one.car.name, car);
  const whole = combos.find((one) => isCar(one) && isTrack(one));
  if (whole) return { comboId: whole.combo.id };
  const knownCar = combos.find(isCar)?.car;
  const knownLayout = combos.find(isTrack);
  const named = knownCar ? { id: knownCar.id } : { name: car.trim() };
  if (knownLayout)
    return {
      combo: { car: named, track: { id: knownLayout.track.id }, layout: { id: knownLayout.layout.id } },
    };
  const comma = track.indexOf(",");
  if (comma < 0) return { combo: { car: named, track: { name: track.trim() } } };
  const [ofTrack, ofLayout] = [track.slice(0, comma).trim(), track.slice(comma + 1).trim()];
  return { combo: { car: named, track: { name: ofTrack }, layout: { name: ofLayout } } };
}

/** What typed names are likely meant for, where they are not known: names that differ from them in accents only. */
export function likelyMeant(
  car: string,
  track: string,
  { cars, layouts, tracks }: Names,
): { readonly car: string | undefined; readonly track: string | undefined } {
  const labels = layouts.map(({ label }) => label);
  const [ofTrack = ""] = track.split(",", 1);
  const other = meantOf(
    ofTrack,
    tracks.map(({ name }) => name),
  );
  const newLayout = other === undefined ? undefined : `${other}${track.slice(ofTrack.length)}`;
  return {
    car: meantOf(
      car,
      cars.map(({ label }) => label),
    ),
    track: labels.some((label) => sameName(label, track)) ? undefined : (meantOf(track, labels) ?? newLayout),
  };
}

function meantOf(name: string, known: readonly string[]): string | undefined {
  return known.some((other) => sameName(other, name))
    ? undefined
    : known.find((other) => likelyTwin(other, name));
}

/** Why a name will not do, or undefined. */
export function problemOfName(
  text: string,
  what: string,
  example: string,
): { wrong: string; right: string } | undefined {
  const name = text.trim();
  if (sameName(name, "") || sameName(name, ","))
    return { wrong: `The ${what} needs a name`, right: `Write one, for example ${example}` };
  if ([...name].length > longestName)
    return {
      wrong: `The name of the ${what} has ${[...name].length} characters`,
      right: `Names go up to ${longestName}: shorten it`,
    };
  return undefined;
}

/** Why a name has to be asked about before it is made, or undefined. */
export function problemOfLikely(old: string | undefined): { wrong: string; right: string } | undefined {
  if (old === undefined) return undefined;
  return { wrong: `This is nearly your ${old}`, right: "Say below whether it is that one" };
}
