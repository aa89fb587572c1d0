import { useState } from "react";
import { formatLapTime } from "#domain";
import { readTime } from "#entry";
import { Field } from "#ui/Field.tsx";
import type { SessionData } from "./useSession.ts";

/** A lap time for this session alone, stored when the field is left. */
export function DayTarget({
  data,
  onStore,
}: {
  readonly data: SessionData;
  readonly onStore: (ms: number | undefined) => void;
}) {
  const { targetMs } = data.session;
  const [text, setText] = useState(targetMs === undefined ? "" : formatLapTime(targetMs));
  const read =
    text.trim() === "" ? undefined : readTime(text, { displayDecimals: data.preferences.displayDecimals });
  return (
    <Field
      label="Target of the day"
      value={text}
      inputMode="decimal"
      onChange={setText}
      hint="A lap time, 1:23.000. Leave it empty for none."
      problem={read?.ok === false ? read.problem : undefined}
      onBlur={() => {
        const next = read === undefined ? undefined : read.ok ? read.ms : targetMs;
        if (next !== targetMs) onStore(next);
      }}
    />
  );
}
