import { Suspense } from "react";
import { asideRows } from "#db";
import { useRows } from "#live";
import { useAddress } from "#state/address.ts";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { laterPart } from "#ui/laterPart.ts";

const AsideRows = laterPart(() => import("./AsideRows.tsx").then((file) => file.AsideRows));

/** Stands above every page but Data, where they can be mended, while rows are set aside. */
export function AsideNotice() {
  const { place } = useAddress();
  const rows = useRows(asideRows, []);
  if (rows === undefined || rows.length === 0 || place === "data") return null;
  return (
    <FaultBoundary what="What is set aside">
      <Suspense fallback={null}>
        <AsideRows rows={rows} />
      </Suspense>
    </FaultBoundary>
  );
}
