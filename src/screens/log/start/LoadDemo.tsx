import { useLoadDemo } from "#live";
import { demoAddress } from "#state/demoAddress.ts";
import { Button } from "#ui/Button.tsx";

/** Loads the demo logbook beside one's own and opens it; one button on Data removes it again. */
export function LoadDemo() {
  const { load, isLoading } = useLoadDemo(demoAddress);
  return (
    <Button size="between" disabled={isLoading} onClick={load}>
      Load the demo logbook
    </Button>
  );
}
