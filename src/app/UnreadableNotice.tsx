import { Suspense } from "react";
import { useUnreadable } from "#live";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { laterPart } from "#ui/laterPart.ts";

const UnreadableRows = laterPart(() => import("./UnreadableRows.tsx").then((file) => file.UnreadableRows));

/** Stands above the page while rows of the logbook cannot be read. */
export function UnreadableNotice() {
  // Those that could be read go aside, and are named by `AsideNotice`.
  const rows = useUnreadable().filter(({ aside }) => aside === undefined);
  if (rows.length === 0) return null;
  return (
    <FaultBoundary what="Which rows cannot be read">
      <Suspense fallback={null}>
        <UnreadableRows rows={rows} />
      </Suspense>
    </FaultBoundary>
  );
}
