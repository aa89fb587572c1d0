import type { Ahead } from "#db";
import { isClockWrong, practiceDay, sayClockWrong, sayDate } from "#domain";
import type { Surroundings } from "#live";
import { Checkbox } from "#ui/Checkbox.tsx";
import { Notice } from "#ui/Notice.tsx";
import { asSentence } from "#words";

interface AheadQuestionProps {
  readonly ahead: Ahead;
  readonly surroundings: Surroundings;
  readonly isConfirmed: boolean;
  /** The driver went on without an answer. */
  readonly isMissed: boolean;
  readonly onChange: (isConfirmed: boolean) => void;
}

/**
 * Entries stamped ahead of this device's clock: either a device's clock stood ahead when they were made, or this one's
 * is behind. Only the driver can say which, and nothing is merged before.
 */
export function AheadQuestion(props: AheadQuestionProps) {
  const { ahead, surroundings, isConfirmed, isMissed, onChange } = props;
  const { clock, zone } = surroundings;
  const now = clock();
  const dayOf = (at: number) => sayDate(practiceDay(at, zone(), 0));
  const today = dayOf(now);
  const entries = ahead.count === 1 ? "One entry is" : `${ahead.count} entries are`;
  const right = "set this device’s clock right, then choose the file again.";
  if (isClockWrong(now))
    return (
      <Notice tone="caution">
        <p role="alert">
          {sayClockWrong(practiceDay(now, zone(), 0))} {asSentence(right)}
        </p>
      </Notice>
    );
  return (
    <Notice tone="caution">
      <p>
        {entries} dated after today, as late as {dayOf(ahead.newest)}: a device’s clock stood ahead. What was
        changed elsewhere since then stays.
      </p>
      <Checkbox
        label={`Today is ${today}`}
        checked={isConfirmed}
        onChange={onChange}
        size="between"
        hint={`If it is not: ${right}`}
      />
      <p role="alert">{isMissed && `Not merged: say first whether today is ${today}.`}</p>
    </Notice>
  );
}
