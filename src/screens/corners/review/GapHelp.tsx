import type { GapUnit } from "#domain";
import { seenSigns } from "#entry";
import { Disclosure } from "#ui/Disclosure.tsx";
import styles from "./Review.module.css";

/** What may be typed, one click away from the line. */
export function GapHelp({ unit }: { readonly unit: GapUnit }) {
  return (
    <Disclosure title="What can be typed" level={3}>
      <dl className={styles["help"]}>
        <dt>{unit === "cars" ? "h . 0.3" : "0.8 . 1.2"}</dt>
        <dd>
          what was left at entry, apex and exit, in {unit === "cars" ? "car widths" : "metres"}, with spaces
          between; as many of the three as you saw
        </dd>
        <dt>h</dt>
        <dd>half a car’s width</dd>
        <dt>.</dt>
        <dd>nothing left</dd>
        <dt>−0.2 or −h</dt>
        <dd>over the edge</dd>
        <dt>?</dt>
        <dd>not seen</dd>
        <dt>0.8m 30cm 0.5w</dt>
        <dd>metres, centimetres, car widths, whatever stands ready</dd>
        {seenSigns.map(({ letters, words }) => (
          <div key={letters} className={styles["sign"]}>
            <dt>{letters}</dt>
            <dd>{words}</dd>
          </div>
        ))}
        <dt>/ words</dt>
        <dd>a note on the corner</dd>
        <dt>Enter</dt>
        <dd>goes on to the next corner; in the empty line it skips this one</dd>
        <dt>↑ ↓</dt>
        <dd>the corner before and the next, whatever stands in the line</dd>
        <dt>Escape</dt>
        <dd>empties the line; once more, or Ctrl Z, and what stood there is back</dd>
      </dl>
    </Disclosure>
  );
}
