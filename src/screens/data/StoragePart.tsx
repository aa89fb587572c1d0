import { useEffect, useState } from "react";
import { useDevice } from "#state/device.ts";
import { askToKeep, type Kept, type StorageState, storageState } from "#state/storage.ts";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Part } from "#ui/Part.tsx";

const words: Readonly<Record<Kept, string>> = {
  kept: "This browser has promised to keep the data of this address until you delete them yourself.",
  "not kept":
    "This browser has not promised to keep anything: it may clear all logbooks when it needs the space, and a private window forgets them when it is closed.",
  unknown:
    "This browser does not say whether it keeps the data; a private window forgets them when it is closed.",
};

/** Where the logbooks lie, whether they may be cleared there, and what helps. */
export function StoragePart() {
  const [state, setState] = useState<StorageState>();
  const wasRefused = useDevice(({ askedToPersist }) => askedToPersist === false);
  useEffect(() => {
    let isLeft = false;
    void storageState().then((now) => isLeft || setState(now));
    return () => {
      isLeft = true;
    };
  }, []);
  const ask = async () => {
    const kept = await askToKeep();
    setState((before) => ({ ...before, kept }));
  };
  return (
    <Part title="Storage" ruled>
      {window.isSecureContext === false && <WithoutHttps />}
      <p role="status">
        {state === undefined ? "Asking the browser" : words[state.kept]}
        {wasRefused &&
          state?.kept === "not kept" &&
          " It was asked, and declined; on the home screen it may agree."}
      </p>
      {state?.usageBytes !== undefined && (
        <p>All logbooks and the app itself take up about {megabytes(state.usageBytes)} here.</p>
      )}
      {state?.kept === "not kept" && (
        <p>
          <Button size="between" onClick={() => void ask()}>
            Ask the browser to keep them
          </Button>
        </p>
      )}
      <p>
        Some browsers clear what a site stored after seven days without a visit. An app on the home screen is
        exempt: on a phone, put Lap Ledger there from the browser’s menu. It then also opens without a
        connection.
      </p>
      <p>
        Clearing the browser’s site data removes every logbook at once, without a way back. Only a backup file
        is safe from that.
      </p>
    </Part>
  );
}

function WithoutHttps() {
  return (
    <Notice tone="caution">
      <p>
        <strong>This address is without https.</strong> So the app does not open without a connection, the
        browser cannot be asked to keep the data, and backups carry no checksum. All else works.
      </p>
    </Notice>
  );
}

function megabytes(bytes: number): string {
  return bytes < 100_000 ? "0.1 MB" : `${(bytes / 1_000_000).toFixed(1)} MB`;
}
