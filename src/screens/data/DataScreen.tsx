import { type ReactNode, useRef } from "react";
import type { ShelvedLogbook } from "#db";
import { useShelved } from "#live";
import { type DataPart, useAddress } from "#state/address.ts";
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
import { usePartAsked } from "./usePartAsked.ts";

/** Two places on one page: what keeps the laps safe, and after it tables, logbooks and the driver's choices. */
export function DataScreen() {
  const logbooks = useShelved();
  const address = useAddress();
  const page = useRef<HTMLDivElement>(null);
  usePartAsked(page, address.place === "data" && logbooks !== undefined ? address.part : undefined);
  if (logbooks === undefined) return <h1>Data</h1>;
  const titles = logbooks.map(({ title }) => title);
  return (
    <div ref={page} className={styles["screen"]}>
      <div>
        <h1>Data</h1>
        <p className={styles["intro"]}>
          Everything stays in this browser: there is no account and no server. A browser can clear it all, so
          save a backup to a file now and then.
        </p>
      </div>
      <PartsList />
      <section aria-label="Keeping it safe" className={styles["place"]}>
        <p className={styles["name"]}>Keeping it safe</p>
        <Columns>
          <Safe titles={titles} />
          <Elsewhere titles={titles} />
        </Columns>
      </section>
      <section aria-label="Tables, logbooks, preferences" className={styles["place"]}>
        <p className={styles["name"]}>Tables, logbooks, preferences</p>
        <Columns>
          <Tables />
          <Choices logbooks={logbooks} />
        </Columns>
      </section>
    </div>
  );
}

interface TitlesProps {
  readonly titles: readonly string[];
}

/** What is wrong comes first, then the backup of today, whether the browser can be relied on, and the states it keeps. */
function Safe({ titles }: TitlesProps) {
  return (
    <>
      <Named part="aside">
        <AsidePart />
      </Named>
      <DatesAheadPart />
      <TwinsPart />
      <Named part="backup">
        <BackupPart />
      </Named>
      <Named part="automatic">
        <AutoBackupPart titles={titles} />
      </Named>
      <StoragePart />
      <CopiesPart titles={titles} />
    </>
  );
}

/** Other devices, and what can be brought back. */
function Elsewhere({ titles }: TitlesProps) {
  return (
    <>
      <SendPart titles={titles} />
      <Named part="restore">
        <RestorePart titles={titles} />
      </Named>
      <Named part="deleted">
        <DeletedPart />
      </Named>
    </>
  );
}

function Tables() {
  return (
    <>
      <Named part="import">
        <ImportPart />
      </Named>
      <ExportPart />
    </>
  );
}

function Choices({ logbooks }: { readonly logbooks: readonly ShelvedLogbook[] }) {
  return (
    <>
      <Named part="logbooks">
        <LogbooksPart logbooks={logbooks} />
      </Named>
      <DemoPart
        demo={logbooks.find(({ kind }) => kind === "demo")}
        own={logbooks.filter(({ kind }) => kind === "own")}
      />
      <Named part="preferences">
        <PreferencesPart />
      </Named>
      <Named part="cautions">
        <CautionsPart />
      </Named>
      <ErasePart logbooks={logbooks} />
    </>
  );
}

/** A part that an address can ask for; what it draws stands in the column as if it were drawn there. */
function Named({ part, children }: { readonly part: DataPart; readonly children: ReactNode }) {
  return (
    <div data-part-of={part} className={styles["named"]}>
      {children}
    </div>
  );
}
