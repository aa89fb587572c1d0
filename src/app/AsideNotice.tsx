import { lazy, Suspense } from "react";
import { asideRows } from "#db";
import { useRows } from "#live";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";

const AsideRows = lazy(() => import("./AsideRows.tsx").then((file) => ({ default: file.AsideRows })));

/** Stands above the page while rows are set aside. */
export function AsideNotice() {
  const rows = useRows(asideRows, []);
  if (rows === undefined || rows.length === 0) return null;
  return (
    <FaultBoundary what="What is set aside">
      <Suspense fallback={null}>
        <AsideRows rows={rows} />
      </Suspense>
    </FaultBoundary>
  );
}
