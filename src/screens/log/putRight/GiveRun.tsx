import type { Run } from "#domain";
import { useGiveRun, useLogbook, useShelved } from "#live";
import { PickAndDo } from "./PickAndDo.tsx";

/** Moves a guest's run to a logbook of their own, where this browser holds one. */
export function GiveRun({ run, onMoved }: { readonly run: Run; readonly onMoved: () => void }) {
  const { entry } = useLogbook();
  const give = useGiveRun();
  const others = (useShelved() ?? []).filter(({ name, kind }) => name !== entry.name && kind === "own");
  const move = async (name: string) => {
    const other = others.find((one) => one.name === name);
    if (other && (await give(run.id, other))) onMoved();
  };
  return (
    <PickAndDo
      label="Move this run to the guest's own logbook"
      prompt="choose a logbook"
      none="make a logbook for them on Data"
      options={others.map(({ name, title }) => ({ value: name, label: title }))}
      deed="Move"
      onDo={move}
    />
  );
}
