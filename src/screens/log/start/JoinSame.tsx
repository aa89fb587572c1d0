import { combosWithNames, joinCars, joinCombos, joinTracks, type Same } from "#db";
import { comboName } from "#domain";
import { useRows, useWrite } from "#live";
import { PickAndDo } from "../putRight/PickAndDo.tsx";
import type { SessionData } from "../session/useSession.ts";
import { namesOf } from "./comboChoice.ts";

const joins = { car: joinCars, track: joinTracks, combo: joinCombos } as const;

/** One thing written under two names becomes one again: all that belongs to this one goes to the other. */
export function JoinSame({ data, onJoined }: { readonly data: SessionData; readonly onJoined: () => void }) {
  const write = useWrite();
  const combos = useRows((book) => combosWithNames(book), []) ?? [];
  const { cars, tracks } = namesOf(combos);
  const { car, track, combo } = data;
  const join = (what: keyof typeof joins, dropId: string) => async (keepId: string) => {
    const same: Same = { keepId, dropId };
    if (await write((book) => joins[what](book, same), { isUndoOffered: true })) onJoined();
  };
  return (
    <>
      <p>All that is written under the name here goes to the one you choose, which keeps its name.</p>
      <PickAndDo
        label={`The car “${car.name}” is the same as`}
        prompt="choose a car"
        none="there is no other car"
        options={cars.filter(({ id }) => id !== car.id).map(({ id, label }) => ({ value: id, label }))}
        deed="Make one car"
        onDo={join("car", car.id)}
      />
      <PickAndDo
        label={`The track “${track.name}” is the same as`}
        prompt="choose a track"
        none="there is no other track"
        options={tracks
          .filter(({ id }) => id !== track.id)
          .map(({ id, name }) => ({ value: id, label: name }))}
        deed="Make one track"
        onDo={join("track", track.id)}
      />
      <PickAndDo
        label="This combo is the same as"
        prompt="choose a combo"
        none="there is no other combo"
        options={combos
          .filter((other) => other.combo.id !== combo.id)
          .map((other) => ({ value: other.combo.id, label: comboName(other) }))}
        deed="Make one combo"
        onDo={join("combo", combo.id)}
      />
    </>
  );
}
