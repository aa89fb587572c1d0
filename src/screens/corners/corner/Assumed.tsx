import { setLowestSpeed } from "#db";
import { cornerRanges, type Id } from "#domain";
import { useWrite } from "#live";
import { assumedGrip, assumedWidth, bendTaken, type CornerCost, type CornerFacts } from "#physics";
import { printAddress } from "#state/address.ts";
import { Disclosure } from "#ui/Disclosure.tsx";
import { sayAssumed, sayAssumedInShort, sayHangsOn, tooSlowForBend } from "#words";
import { kmh } from "../layout/cornerCells.ts";
import { StoredMeasure } from "../layout/StoredMeasure.tsx";
import styles from "./Corner.module.css";

const speedSeen = kmh("Lowest speed seen here", cornerRanges.lowestSpeed);

interface AssumedProps {
  readonly comboId: Id;
  readonly facts: CornerFacts;
  readonly cost: CornerCost;
  readonly isLookedAt: boolean;
}

/** What the estimate of a corner rests on, and how far it hangs on what is not known. */
export function Assumed({ comboId, facts, cost, isLookedAt }: AssumedProps) {
  const write = useWrite();
  const { number } = facts.corner;
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
              {sayAssumed(assumed, { ...corner, bend: bendTaken(facts) }).map((fact) => (
                <li key={fact}>{fact}</li>
              ))}
            </ul>
          </>
        )}
        {isLookedAt && (
          <>
            <p>So much the seconds hang on it:</p>
            <ul>
              {sayHangsOn(
                { grip: inMs(hangsOn.grip), width: inMs(hangsOn.width), gap: inMs(hangsOn.gap) },
                assumed,
                { grip: assumedGrip, width: assumedWidth },
              ).map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </>
        )}
        <div className={styles["field"]}>
          <StoredMeasure
            draftKey={`corners speed ${comboId} ${number}`}
            measure={speedSeen}
            value={facts.lowestSpeed}
            onValue={(speed) =>
              write((book) => setLowestSpeed(book, { comboId, number, speed }), { isUndoOffered: true })
            }
            hint="with this car; also 60 mph or 25 m/s. It tells the radius, by the grip."
          />
        </div>
        <p>
          An estimate from two arcs that meet at the apex, on a flat road with even grip and no downforce. The
          better the layout is known, the narrower the range:{" "}
          <a href={printAddress({ place: "corners", comboId, part: "layout" })}>
            add what you know of the corner
          </a>
          .
        </p>
      </div>
    </Disclosure>
  );
}
