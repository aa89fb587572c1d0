import type { ComboLine } from "#stats";
import { Ink } from "#ui/Ink.tsx";
import { type GainColumn, gainInShort } from "#words";
import styles from "./GainFigure.module.css";

const inks = { faster: "gain", slower: "loss", neither: "plain" } as const;

interface GainFigureProps {
  readonly gain: ComboLine["gain"];
  readonly column: GainColumn;
}

/** How far the level has moved, with its word of certainty beside it. */
export function GainFigure({ gain, column }: GainFigureProps) {
  const { figure, certainty, way } = gainInShort(gain, column);
  return (
    <>
      <span className={styles["gain"]}>
        <Ink tone={inks[way]}>{figure}</Ink>
      </span>{" "}
      <span className={styles["certainty"]}>
        {way === "neither" ? "" : `${way}, `}
        {certainty}
      </span>
    </>
  );
}
