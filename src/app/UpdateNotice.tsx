import { useRegisterSW } from "virtual:pwa-register/react";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";

/** A new version waits until the driver takes it; a reload brings it too. */
export function UpdateNotice() {
  const {
    needRefresh: [isWaiting, setWaiting],
    updateServiceWorker,
  } = useRegisterSW();
  if (!isWaiting) return null;
  return (
    <div role="status">
      <Notice
        actions={
          <>
            <Button onClick={() => void updateServiceWorker(true)}>Update</Button>
            <Button variant="quiet" onClick={() => setWaiting(false)}>
              Later
            </Button>
          </>
        }
      >
        <p>A new version of Lap Ledger is ready. What you typed is kept.</p>
      </Notice>
    </div>
  );
}
