import { useLoadDemo } from "#live";
import { demoAddress } from "#state/demoAddress.ts";
import { DemoButton } from "./DemoButton.tsx";

/** Loads the demo logbook beside one's own and opens it; one button on Data removes it again. */
export function LoadDemo() {
  const { load, isLoading } = useLoadDemo(demoAddress);
  return <DemoButton disabled={isLoading} onClick={load} />;
}
