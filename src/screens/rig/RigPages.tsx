import { type ComponentType, Suspense } from "react";
import type { CalendarDate, Id, RigSettings } from "#domain";
import { goTo, printAddress, type RigPart } from "#state/address.ts";
import { laterPart } from "#ui/laterPart.ts";
import styles from "./Rig.module.css";

interface PageProps {
  readonly inForce: RigSettings | undefined;
  readonly today: CalendarDate;
  readonly onStored: () => void;
}

/** The parts that are a page behind the front. */
type Page = Exclude<RigPart, "record">;

const pages: Readonly<Record<Page, ComponentType<PageProps>>> = {
  screen: laterPart(async () => (await import("./screen/ScreenSum.tsx")).ScreenSum),
  plan: laterPart(async () => (await import("./test/PlanTest.tsx")).PlanTest),
  wheel: laterPart(async () => (await import("./wheel/WheelSum.tsx")).WheelSum),
};

const TestPage = laterPart(async () => (await import("./test/TestPage.tsx")).TestPage);

interface RigPagesProps {
  /** One of the sums or the plan, or one rig test. */
  readonly page: { readonly part: Page } | { readonly testId: Id };
  readonly inForce: RigSettings | undefined;
  readonly today: CalendarDate;
  /** What had the focus is gone. */
  readonly onDone: () => void;
}

/** The pages behind the front of the rig, each with the way back. */
export function RigPages({ page, inForce, today, onDone }: RigPagesProps) {
  const onStored = () => {
    goTo({ place: "rig" }, "replace");
    onDone();
  };
  return (
    <>
      <p className={styles["back"]}>
        <a href={printAddress({ place: "rig" })}>Back to the rig</a>
      </p>
      <Suspense fallback={<p>Opening</p>}>
        {"testId" in page ? (
          <TestPage testId={page.testId} />
        ) : (
          <Part of={page.part} inForce={inForce} today={today} onStored={onStored} />
        )}
      </Suspense>
    </>
  );
}

function Part({ of, ...props }: PageProps & { readonly of: Page }) {
  const Found = pages[of];
  return <Found {...props} />;
}
