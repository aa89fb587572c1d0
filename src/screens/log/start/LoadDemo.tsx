import { useLoadDemo } from "#live";
import { demoAddress } from "#state/demoAddress.ts";
import { Button } from "#ui/Button.tsx";

/** Loads the demo logbook beside one's own and opens it. */
export function LoadDemo() {
  const { load, isLoading } = useLoadDemo(demoAddress);
  return (
    <>
      <p>
        Twelve weeks of a made-up club racer, as a logbook of its own. One button on Data removes it again.
      </p>
      <p>
        <Button size="between" disabled={isLoading} onClick={load}>
          Load the demo logbook
        </Button>
      </p>
    </>
  );
}
