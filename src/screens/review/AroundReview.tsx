import { type ComponentType, Suspense } from "react";
import { preferences } from "#db";
import { useCombos, useRows, useSessionsInDoubt, useToday } from "#live";
import type { AroundReview as AroundAddress } from "#state/address.ts";
import { FaultBoundary } from "#ui/FaultBoundary.tsx";
import { laterPart } from "#ui/laterPart.ts";
import { SessionsInDoubt } from "#ui/SessionsInDoubt.tsx";
import type { AroundProps } from "./aroundProps.ts";
import { ReviewNav } from "./ReviewNav.tsx";
import styles from "./ReviewScreen.module.css";

const parts: Readonly<Record<AroundAddress["part"], ComponentType<AroundProps>>> = {
  compare: laterPart(() => import("./ComparePage.tsx").then((file) => file.ComparePage)),
  across: laterPart(() => import("./AcrossPage.tsx").then((file) => file.AcrossPage)),
  search: laterPart(() => import("./SearchPage.tsx").then((file) => file.SearchPage)),
  statement: laterPart(() => import("./StatementPage.tsx").then((file) => file.StatementPage)),
};

const names = {
  compare: "The comparison",
  across: "All combos",
  search: "The search",
  statement: "The week",
} as const;

/** The views beside the review of one combo: all combos, the search, one week, two side by side. */
export function AroundReview({ address }: { readonly address: AroundAddress }) {
  const combos = useCombos();
  const chosen = useRows(preferences, []);
  return (
    <div className={styles["screen"]}>
      <ReviewNav here={address.part} />
      {combos === undefined || chosen === undefined ? (
        <p>Opening Review</p>
      ) : (
        <Opened address={address} combos={combos} preferences={chosen} />
      )}
    </div>
  );
}

function Opened(props: Omit<AroundProps, "today">) {
  const today = useToday(props.preferences);
  const ahead = useSessionsInDoubt(today);
  const { part } = props.address;
  const Part = parts[part];
  return (
    <>
      {part !== "search" && <SessionsInDoubt sessions={ahead} today={today} />}
      <FaultBoundary key={part} what={names[part]}>
        <Suspense fallback={<p>Opening Review</p>}>
          <Part {...props} today={today} />
        </Suspense>
      </FaultBoundary>
    </>
  );
}
