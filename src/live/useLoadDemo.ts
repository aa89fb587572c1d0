import { useState } from "react";
import { fetchFile } from "#files";
import { useNotices } from "#state/notices.ts";
import { useLogbook } from "./logbookContext.ts";
import { useIncoming } from "./useIncoming.ts";
import { useShelved } from "./useShelved.ts";

/**
 * Loads the demo as a logbook of its own, as any backup is restored, and opens it; one that is on the shelf already is opened
 * again.
 * @param address where the demo lies as it came
 * @param onLoaded what happens once it is being opened
 */
export function useLoadDemo(
  address: string,
  onLoaded?: () => void,
): {
  readonly load: () => void;
  readonly isLoading: boolean;
} {
  const { openOther } = useLogbook();
  const shelved = useShelved();
  const { asNew } = useIncoming({ goesOn: true });
  const say = useNotices((notices) => notices.say);
  const [isLoading, setLoading] = useState(false);

  const fetchAndRestore = async () => {
    const file = await fetchFile(address);
    if (file.ok) {
      if (await asNew(file.source, { kind: "demo" })) onLoaded?.();
      return;
    }
    const { wrong, right } = file.problem;
    const text = `Demo logbook not loaded. ${wrong} ${right} Nothing was changed.`;
    say({ kind: "fault", text, actions: [] });
  };
  const load = () => {
    const there = shelved?.find(({ kind }) => kind === "demo");
    if (there) return openOther(there.name);
    setLoading(true);
    void fetchAndRestore().finally(() => setLoading(false));
  };
  return { load, isLoading };
}
