import { sayDate } from "#domain";
import { printAddress } from "#state/address.ts";
import { Name } from "#ui/Name.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import { sayRigAnswer, sayRigEvidence, sayRigName } from "#words";
import type { Looked } from "./looked.ts";

const columns = [
  { key: "from", title: "from" },
  { key: "what", title: "what changed" },
  { key: "said", title: "what became of it" },
];

/** Did the rig help? Each change of the rig with what became of this combo, the newest first. */
export default function RigPart({ looked: { rig } }: { readonly looked: Looked }) {
  return (
    <RuledTable
      caption="Changes of the rig, the newest first"
      captionHidden
      columns={columns}
      rows={rig.map((answer) => ({
        id: answer.rig.id,
        cells: {
          from: sayDate(answer.rig.from),
          what: (
            <a href={printAddress({ place: "rig", rigId: answer.rig.id })}>
              <Name>{sayRigName(answer.rig)}</Name>
            </a>
          ),
          said: `${sayRigAnswer(answer)} (${sayRigEvidence(answer)})`,
        },
      }))}
    />
  );
}
