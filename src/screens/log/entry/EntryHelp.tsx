import { aboutRemark, remarkKinds } from "#domain";
import { Disclosure } from "#ui/Disclosure.tsx";
import styles from "./EntryHelp.module.css";

/** What may be typed, one click away from the field. */
export function EntryHelp({ sectors }: { readonly sectors: number | undefined }) {
  return (
    <Disclosure title="What can be typed">
      <dl className={styles["list"]}>
        <dt>1:23.456</dt>
        <dd>the whole time; a comma, or fewer decimals, will do</dd>
        <dt>4912</dt>
        <dd>the last digits, from the seconds' last digit on, near your usual pace</dd>
        <dt>+0.6</dt>
        <dd>slower than the lap before by so much; −0.25 faster</dd>
        {(sectors === undefined || sectors > 1) && (
          <>
            <dt>27.1 31.42 24.9</dt>
            <dd>
              {sectors === undefined ? "the" : `the ${sectors}`} sector times with spaces between them, alone
              or after the lap time
            </dd>
          </>
        )}
        {remarkKinds.map(({ letter, word }) => (
          <div key={letter} className={styles["remark"]}>
            <dt>{letter}</dt>
            <dd>{word}</dd>
          </div>
        ))}
        <dt>4912 {aboutRemark("cut").letter}5</dt>
        <dd>
          a remark after the time, at corner 5 (c@5 and cut5 are the same); alone it is a lap without a time
        </dd>
        <dt>4912 {aboutRemark("spin").letter}</dt>
        <dd>such a lap may be tens of seconds longer: the arrow down goes to the times it may have been</dd>
        <dt>/ words</dt>
        <dd>a note on the lap</dd>
        <dt>Escape</dt>
        <dd>
          empties the field; pressed again, it brings back what stood there. What was not stored and then
          typed over comes back first
        </dd>
        <dt>digits</dt>
        <dd>typed while no field has the focus, they come here; Data, Preferences switches that off</dd>
        <dt>↑</dt>
        <dd>in the empty field, opens the last lap for editing</dd>
      </dl>
    </Disclosure>
  );
}
