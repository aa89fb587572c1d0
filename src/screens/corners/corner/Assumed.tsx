import type { Id } from "#domain";
import type { CornerCost } from "#physics";
import { printAddress } from "#state/address.ts";
import { Disclosure } from "#ui/Disclosure.tsx";
import { sayAssumed, sayAssumedInShort, sayHangsOn, tooSlowForBend } from "#words";
import styles from "./Corner.module.css";

interface AssumedProps {
  readonly comboId: Id;
  readonly cost: CornerCost;
  readonly isLookedAt: boolean;
}

/** What the estimate of a corner rests on, and how far it hangs on what is not known. */
export function Assumed({ comboId, cost, isLookedAt }: AssumedProps) {
  const { assumed, corner, hangsOn, isTooSlow } = cost;
  const inMs = ({ low, high }: { readonly low: number; readonly high: number }) => ({
    low: low * 1000,
    high: high * 1000,
  });
  return (
    <Disclosure title="What this rests on" answer={sayAssumedInShort(assumed)} level={2}>
      <div className={styles["lines"]}>
        {isTooSlow && <p>{tooSlowForBend}</p>}
        {assumed.length > 0 && (
          <>
            <p>Not known of this corner or car, and therefore assumed (common practice, no source):</p>
            <ul>
              {sayAssumed(assumed, corner).map((fact) => (
                <li key={fact}>{fact}</li>
              ))}
            </ul>
          </>
        )}
        {isLookedAt && (
          <>
            <p>So much the seconds hang on it:</p>
            <ul>
              {sayHangsOn({
                grip: inMs(hangsOn.grip),
                width: inMs(hangsOn.width),
                gap: inMs(hangsOn.gap),
              }).map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </>
        )}
        <p>
          An estimate from two arcs that meet at the apex, on a flat road with even grip and no downforce. The
          better the layout is known, the narrower the range:{" "}
          <a href={printAddress({ place: "corners", comboId, part: "layout" })}>tell more of the corner</a>.
        </p>
      </div>
    </Disclosure>
  );
}
