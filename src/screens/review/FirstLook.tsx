import type { ReactNode } from "react";
import { differenceShown, formatSeconds, sayShortDate } from "#domain";
import { printAddress } from "#state/address.ts";
import { type GainInShort, gainInShort, sayGainSpan, sayLapTime, sayUsual } from "#words";
import styles from "./FirstLook.module.css";
import type { Looked } from "./looked.ts";

interface FirstLookProps {
  readonly looked: Looked;
  /** Opens a question and goes there. */
  readonly onQuestion: (id: string) => void;
}

const inks = { faster: "gain", slower: "loss", neither: "plain" } as const;

/** Usual lap, PB, what lies between them, and what was gained: each leads to where it comes from. */
export function FirstLook({ looked, onQuestion }: FirstLookProps) {
  const { review, today, on } = looked;
  const { latestUsual: usual, gain } = review;
  const best = review.bests.at(-1);
  const between = usual && best && differenceShown(usual, best);
  const short = gainInShort(gain);
  return (
    <dl className={styles["look"]}>
      <Figure label={usual === undefined ? "usual" : `usual, ${sayShortDate(usual.date, today)}`}>
        {usual === undefined ? (
          <span className={styles["none"]}>needs 5 pace laps</span>
        ) : (
          <a href={printAddress({ place: "log", sessionId: usual.sessionId })}>
            {sayUsual(usual.ms, usual.decimals)}
          </a>
        )}
      </Figure>
      <Figure label={best === undefined ? "PB" : `PB, ${sayShortDate(best.date, today)}`}>
        {best === undefined ? (
          <span className={styles["none"]}>no PB yet</span>
        ) : (
          <a href={printAddress({ place: "log", sessionId: best.sessionId, lapId: best.lapId })}>
            {sayLapTime(best.ms, best.decimals)}
          </a>
        )}
      </Figure>
      {between !== undefined && (
        <Figure label="between them">
          <button type="button" className={styles["way"]} onClick={() => onQuestion("time")}>
            {formatSeconds(Math.abs(between.ms), Math.min(2, between.decimals))}
          </button>
        </Figure>
      )}
      <Figure label={gain.known ? sayGainSpan(gain.value, on) : "gained"}>
        <Gain short={short} onQuestion={onQuestion} />
      </Figure>
    </dl>
  );
}

function Gain({ short, onQuestion }: { readonly short: GainInShort } & Pick<FirstLookProps, "onQuestion">) {
  return (
    <>
      <button
        type="button"
        className={styles["way"]}
        data-ink={inks[short.way]}
        onClick={() => onQuestion("faster")}
      >
        {short.figure}
      </button>{" "}
      <span className={styles["detail"]}>
        {short.way === "neither" ? "" : `${short.way}, `}
        {short.certainty}
      </span>
    </>
  );
}

function Figure({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt className={styles["label"]}>{label}</dt>
      <dd className={styles["value"]}>{children}</dd>
    </div>
  );
}
