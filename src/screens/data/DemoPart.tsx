import { lowestSchema, newestSchema, type ShelvedLogbook } from "#db";
import { browserSha256, fetchBackup } from "#files";
import { useLoadDemo, useRemoveLogbook } from "#live";
import { demoAddress } from "#state/demoAddress.ts";
import { Button } from "#ui/Button.tsx";
import { Part } from "#ui/Part.tsx";

/** A made-up driver's twelve weeks, to look around in: loaded and removed with one button each. */
export function DemoPart({ demo }: { readonly demo: ShelvedLogbook | undefined }) {
  const { load, isLoading } = useLoadDemo(() =>
    fetchBackup(demoAddress, { lowest: lowestSchema, newest: newestSchema, sha256: browserSha256() }),
  );
  const remove = useRemoveLogbook();
  return (
    <Part title="Demo" ruled>
      <p>
        Twelve weeks of a made-up club racer, as a logbook of its own. Your own logbooks are not touched by
        it.
      </p>
      <p>
        {demo === undefined ? (
          <Button size="between" disabled={isLoading} onClick={load}>
            Load the demo logbook
          </Button>
        ) : (
          <Button size="between" onClick={() => void remove(demo)}>
            Remove the demo logbook
          </Button>
        )}
      </p>
    </Part>
  );
}
