import { useShelved } from "#live";
import { Columns } from "#ui/Columns.tsx";
import { AsidePart } from "./AsidePart.tsx";
import { AutoBackupPart } from "./AutoBackupPart.tsx";
import { BackupPart } from "./BackupPart.tsx";
import { CautionsPart } from "./CautionsPart.tsx";
import { CopiesPart } from "./CopiesPart.tsx";
import styles from "./DataScreen.module.css";
import { DatesAheadPart } from "./DatesAheadPart.tsx";
import { DeletedPart } from "./DeletedPart.tsx";
import { DemoPart } from "./DemoPart.tsx";
import { ErasePart } from "./ErasePart.tsx";
import { ExportPart } from "./ExportPart.tsx";
import { ImportPart } from "./ImportPart.tsx";
import { LogbooksPart } from "./LogbooksPart.tsx";
import { PartsList } from "./PartsList.tsx";
import { PreferencesPart } from "./PreferencesPart.tsx";
import { RestorePart } from "./RestorePart.tsx";
import { SendPart } from "./SendPart.tsx";
import { StoragePart } from "./StoragePart.tsx";
import { TwinsPart } from "./TwinsPart.tsx";

/** Logbooks, backups, where it is all kept, and the driver's choices. */
export function DataScreen() {
  const logbooks = useShelved();
  if (logbooks === undefined) return <h1>Data</h1>;
  const titles = logbooks.map(({ title }) => title);
  return (
    <div className={styles["screen"]}>
      <div>
        <h1>Data</h1>
        <p className={styles["intro"]}>
          Everything stays in this browser: there is no account and no server. A browser can clear it all, so
          save a backup to a file now and then.
        </p>
      </div>
      <PartsList />
      <Columns>
        <>
          <AsidePart />
          <DatesAheadPart />
          <TwinsPart />
          <BackupPart />
          <AutoBackupPart titles={titles} />
          <SendPart titles={titles} />
          <RestorePart titles={titles} />
          <CopiesPart titles={titles} />
          <LogbooksPart logbooks={logbooks} />
          <DemoPart
            demo={logbooks.find(({ kind }) => kind === "demo")}
            own={logbooks.filter(({ kind }) => kind === "own")}
          />
          <StoragePart />
        </>
        <>
          <ImportPart />
          <ExportPart />
          <PreferencesPart />
          <DeletedPart />
          <CautionsPart />
          <ErasePart logbooks={logbooks} />
        </>
      </Columns>
    </div>
  );
}
