import { useState } from "react";
import { putDatesRight, stampAhead, useLogbook, useNow, useRows } from "#live";
import { Button } from "#ui/Button.tsx";
import { Part } from "#ui/Part.tsx";
import { sayDatesAhead } from "#words";

/** Entries that a clock ahead has stamped, and the way to put them right; shown only where there are some. */
export function DatesAheadPart() {
  const open = useLogbook();
  const now = useNow();
  const [isBusy, setBusy] = useState(false);
  const newest = useRows(async (book) => (await stampAhead(book, now)) ?? null, [now]);
  if (newest === undefined || newest === null) return null;
  const { text, today } = sayDatesAhead(newest, now, open.surroundings.zone());
  const right = async () => {
    setBusy(true);
    await putDatesRight(open);
    setBusy(false);
  };
  return (
    <Part title="Dates after today" ruled>
      <p>{text} If today is another day, set this device’s clock right instead.</p>
      <p>
        <Button size="between" disabled={isBusy} onClick={() => void right()}>
          {today}
        </Button>
      </p>
    </Part>
  );
}
