import { saveBackup, useLogbook } from "#live";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";
import type { Entry } from "../entry/useEntry.ts";

/** Lines that could not be stored, with what can be done about each. */
export function UnstoredLines({ entry }: { readonly entry: Entry }) {
  const open = useLogbook();
  return entry.unstored.map((line) => (
    <div key={line.id} role="alert">
      <Notice
        tone="caution"
        actions={
          <>
            <Button onClick={() => entry.storeAgain(line)}>Try again</Button>
            {entry.takeBack && (
              <Button onClick={() => entry.takeBack?.(line)}>Put it back in the field</Button>
            )}
            <Button onClick={() => void saveBackup(open, open.entry)}>Save a backup</Button>
          </>
        }
      >
        <p>
          <strong>Not stored: {line.text}.</strong> {line.fault}
        </p>
      </Notice>
    </div>
  ));
}
