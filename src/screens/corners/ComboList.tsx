import { type ComboWithNames, daysDriven } from "#db";
import { type CalendarDate, comboName, sayDate } from "#domain";
import { useRows, useUntil } from "#live";
import { printAddress } from "#state/address.ts";
import { Name } from "#ui/Name.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Part } from "#ui/Part.tsx";
import { type Column, RuledTable } from "#ui/RuledTable.tsx";
import styles from "./Corners.module.css";

const columns: readonly Column[] = [
  { key: "combo", title: "combo" },
  { key: "driven", title: "last driven" },
  { key: "known", title: "corners", figures: true },
];

interface ComboListProps {
  /** The one driven last first. */
  readonly combos: readonly ComboWithNames[];
  /** The address named a combo that is not there. */
  readonly isMissing: boolean;
}

/** The combos of the logbook, to pick one of. */
export function ComboList({ combos, isMissing }: ComboListProps) {
  const until = useUntil();
  const days = useRows((book) => daysDriven(book, until), [until]);
  if (combos.length === 0)
    return (
      <Part title="No combo yet">
        <p>
          Corners belong to the layout of a combo, and combos are made when a session begins. Begin one on{" "}
          <a href={printAddress({ place: "log" })}>Log</a>; then note here what you know of the corners, so
          that “off, corner 5” has a name, and see which are named most often.
        </p>
      </Part>
    );
  return (
    <div className={styles["list"]}>
      {isMissing && (
        <Notice>
          <p>The combo this address names is not in the logbook. Choose one of these.</p>
        </Notice>
      )}
      <RuledTable
        caption="Choose a combo"
        columns={columns}
        rows={combos.map((one) => ({
          id: one.combo.id,
          cells: {
            combo: (
              <a className={styles["combo"]} href={printAddress({ place: "corners", comboId: one.combo.id })}>
                <Name>{comboName(one)}</Name>
              </a>
            ),
            driven: days && sayDay(days.get(one.combo.id)),
            known: one.layout.corners.length === 0 ? "none" : one.layout.corners.length,
          },
        }))}
      />
    </div>
  );
}

const sayDay = (day: CalendarDate | undefined) => (day === undefined ? "not yet" : sayDate(day));
