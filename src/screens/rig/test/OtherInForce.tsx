import { preferences, rigs } from "#db";
import { type Preferences, type RigSettings, type RigTest, rigOn, rigValue } from "#domain";
import { useRows, useToday } from "#live";
import { Notice } from "#ui/Notice.tsx";
import { type SaidSides, sayNotInForce } from "#words";

interface OtherInForceProps {
  readonly test: RigTest;
  readonly sides: SaidSides;
}

/** That the record in force is not the test's A; nothing where it is, or where that cannot be told. */
export function OtherInForce(props: OtherInForceProps) {
  const rows = useRows(async (book) => ({ chosen: await preferences(book), records: await rigs(book) }), []);
  return rows === undefined ? null : <AmongRecords {...props} {...rows} />;
}

interface AmongRecordsProps extends OtherInForceProps {
  readonly chosen: Preferences;
  readonly records: readonly RigSettings[];
}

function AmongRecords({ test: { field, valueA }, sides, chosen, records }: AmongRecordsProps) {
  const inForce = rigOn(records, useToday(chosen));
  if (inForce === undefined || field === undefined || valueA === undefined) return null;
  const value = rigValue(inForce, field);
  if (value === undefined || value === valueA) return null;
  return (
    <Notice>
      <p>{sayNotInForce(sides)}</p>
    </Notice>
  );
}
