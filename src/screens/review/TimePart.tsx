import { BridgeChart } from "#charts/bridge/BridgeChart.tsx";
import { printAddress } from "#state/address.ts";
import { accountLines } from "#stats";
import {
  accountChangeReading,
  accountChangeTitle,
  accountLineMeanings,
  accountLineNames,
  accountReading,
  accountTitle,
  sectorsReading,
  sectorsTitle,
} from "#words";
import { LeftOut } from "./LeftOut.tsx";
import type { Looked } from "./looked.ts";
import { NotYet } from "./NotYet.tsx";
import styles from "./TimePart.module.css";

/** Where does the time go? The account of the period, what became of it, and the sectors. */
export default function TimePart({ looked }: { readonly looked: Looked }) {
  const { review, onSessions } = looked;
  return (
    <>
      <Account looked={looked} />
      <AccountChange looked={looked} />
      <Sectors looked={looked} />
      <LeftOut onSessions={onSessions}>
        Only pace runs written lap by lap are in an account: out and in laps, drills, warm-ups, wet and easy
        runs are not.
      </LeftOut>
      <p>
        <a className={styles["way"]} href={printAddress({ place: "corners", comboId: looked.comboId })}>
          Which corner to work on first
        </a>
      </p>
      {review.account.known && (
        <dl className={styles["meanings"]}>
          {accountLines.map((line) => (
            <div key={line}>
              <dt>{accountLineNames[line]}</dt>
              <dd>{accountLineMeanings[line]}</dd>
            </div>
          ))}
        </dl>
      )}
    </>
  );
}

function Account({ looked: { review, comboName, today } }: { readonly looked: Looked }) {
  const { account } = review;
  if (!account.known) return <NotYet title={accountTitle(review)} />;
  return (
    <BridgeChart
      title={accountTitle(review)}
      reading={accountReading({ account })}
      asOf={today}
      level={3}
      fileName={`${comboName} time account`}
      lines={accountLines.map((line) => ({
        id: line,
        label: accountLineNames[line],
        ms: account.value[line],
      }))}
      balance={{ id: "balance", label: "mean lap", ms: account.value.balance }}
    />
  );
}

function AccountChange({ looked: { review, comboName, today, before } }: { readonly looked: Looked }) {
  const { accountChange } = review;
  // Compared only where there is enough on both sides.
  if (before === undefined || !accountChange.known) return null;
  const { lines, change } = accountChange.value;
  return (
    <BridgeChart
      title={accountChangeTitle(review, before)}
      reading={accountChangeReading(review)}
      asOf={today}
      level={3}
      fileName={`${comboName} change of the time account`}
      lines={lines.map(({ line, ms }) => ({ id: line, label: accountLineNames[line], ms }))}
      balance={{ id: "balance", label: "mean lap", ms: change }}
    />
  );
}

function Sectors({ looked: { review, comboName, corners, today } }: { readonly looked: Looked }) {
  const { sectors } = review;
  if (!sectors.known) return <NotYet title={sectorsTitle(review)}>{sectorsReading(review)}</NotYet>;
  return (
    <BridgeChart
      title={sectorsTitle(review)}
      reading={sectorsReading(review, corners)}
      asOf={today}
      level={3}
      fileName={`${comboName} sectors`}
      lines={sectors.value.sectors.map(({ gap }, index) => ({
        id: `sector ${index + 1}`,
        label: `sector ${index + 1}`,
        ms: gap,
      }))}
      balance={{ id: "balance", label: "all sectors", ms: sectors.value.gap }}
    />
  );
}
