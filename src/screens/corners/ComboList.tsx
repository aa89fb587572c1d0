import type { ComboWithNames } from "#db";
import { comboName, practiceDay, sayDate } from "#domain";
import { useLogbook } from "#live";
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
  readonly combos: readonly (ComboWithNames & { readonly drivenAt: number | undefined })[];
  /** The address named a combo that is not there. */
  readonly isMissing: boolean;
}

/** The combos of the logbook, to pick one of. */
export function ComboList({ combos, isMissing }: ComboListProps) {
  const { surroundings } = useLogbook();
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
            driven:
              one.drivenAt === undefined
                ? "not yet"
                : sayDate(practiceDay(one.drivenAt, surroundings.zone(), 4)),
            known: one.layout.corners.length === 0 ? "none" : one.layout.corners.length,
          },
        }))}
      />
    </div>
  );
}
