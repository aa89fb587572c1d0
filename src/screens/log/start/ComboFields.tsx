import type { FormField } from "#live";
import { Combobox } from "#ui/Combobox.tsx";
import { IsItYours } from "../putRight/IsItYours.tsx";
import { type Names, trackOptions } from "./comboChoice.ts";

interface ComboFieldsProps {
  readonly names: Names;
  readonly car: FormField<string>;
  readonly track: FormField<string>;
  /** Known names that the typed ones are likely meant for. */
  readonly meant: { readonly car: string | undefined; readonly track: string | undefined };
  /** A name was said to be new, though another is like it. */
  readonly onNew: (patch: { readonly newCar: string } | { readonly newTrack: string }) => void;
}

const layoutHint = "A second layout of a track: its name, a comma, the layout (Varnholt Ring, short).";

/** Car and track layout: picked from all there are, or typed where they are new. */
export function ComboFields({ names, car, track, meant, onNew }: ComboFieldsProps) {
  return (
    <>
      <Combobox
        label="Car"
        text={car.value}
        onText={car.onChange}
        options={names.cars}
        onPick={({ label }) => car.onChange(label)}
        sayMake={(text) => `New car “${text}”`}
        onMake={car.onChange}
        problem={car.problem}
      />
      <IsItYours old={meant.car} onUse={car.onChange} onNew={() => onNew({ newCar: car.value })} />
      <Combobox
        label="Track layout"
        text={track.value}
        onText={track.onChange}
        options={trackOptions(names, track.value)}
        onPick={({ label }) => track.onChange(label)}
        sayMake={(text) => `New track “${text}”`}
        onMake={track.onChange}
        problem={track.problem}
        hint={names.tracks.length > 0 ? layoutHint : undefined}
      />
      <IsItYours old={meant.track} onUse={track.onChange} onNew={() => onNew({ newTrack: track.value })} />
    </>
  );
}
