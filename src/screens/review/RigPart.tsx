import { comboName, sayDate } from "#domain";
import { type RigAnswer, useCombos } from "#live";
import { printAddress } from "#state/address.ts";
import { Name } from "#ui/Name.tsx";
import { RuledTable } from "#ui/RuledTable.tsx";
import { sayRigAnswer, sayRigEvidence, sayRigName, sayTestOfSide } from "#words";
import type { Looked } from "./looked.ts";
import styles from "./RigPart.module.css";

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
          said: <Became answer={answer} />,
        },
      }))}
    />
  );
}

/** On this combo, and what a test of the same change found on another one. */
function Became({ answer }: { readonly answer: RigAnswer }) {
  const combos = useCombos();
  const nameOf = (id: string) => {
    const combo = combos?.find((one) => one.id === id);
    return combo === undefined ? "another combo" : comboName(combo);
  };
  return (
    <>
      <p className={styles["became"]}>
        {sayRigAnswer(answer)} <span className={styles["soft"]}>({sayRigEvidence(answer)})</span>
      </p>
      {answer.elsewhere.map(({ id, comboId, report, side }) => (
        <p key={id} className={styles["became"]}>
          <a href={printAddress({ place: "rig", testId: id })}>Tested</a> on <Name>{nameOf(comboId)}</Name>:{" "}
          {sayTestOfSide(report, side)}
        </p>
      ))}
    </>
  );
}
