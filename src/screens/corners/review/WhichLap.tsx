import { sayDate } from "#domain";
import { Select } from "#ui/Select.tsx";
import type { LookedAt } from "./reviewDraft.ts";
import type { ReviewedSession } from "./reviewedLaps.ts";

/** A list to pick from stays short: whoever looks at a replay looks at one of the last laps, or at the usual one. */
const most = 12;

interface WhichLapProps {
  readonly lap: LookedAt | undefined;
  readonly onLap: (lap: LookedAt | undefined) => void;
  /** The combo's last session, where it has one. */
  readonly last: ReviewedSession | undefined;
  /** The session of the lap of a review that is there. */
  readonly held: ReviewedSession | undefined;
}

const keyOf = ({ sessionId, lapId = "" }: LookedAt) => `${sessionId} ${lapId}`;

/** The lap whose replay is looked at: the usual lap, or one of the last session. */
export function WhichLap({ lap, onLap, last, held }: WhichLapProps) {
  const isOfLast = lap?.sessionId === last?.sessionId;
  const newest = (last?.laps ?? []).slice(0, most);
  const old = last?.laps.find(({ lapId }) => isOfLast && lapId === lap?.lapId);
  const laps = [...newest, ...(old && !newest.includes(old) ? [old] : [])];
  const known = laps.map((one) => ({ lap: one as LookedAt, label: one.name }));
  const isListed = lap === undefined || known.some((one) => keyOf(one.lap) === keyOf(lap));
  const options = [
    { lap: undefined, label: "the usual lap" },
    ...known,
    ...(isListed ? [] : [{ lap, label: heldName(lap, held) }]),
  ];
  return (
    <Select
      label="Lap looked at"
      value={lap === undefined ? "" : keyOf(lap)}
      options={options.map((one) => ({
        value: one.lap === undefined ? "" : keyOf(one.lap),
        label: one.label,
      }))}
      onChange={(key) => onLap(options.find((one) => one.lap !== undefined && keyOf(one.lap) === key)?.lap)}
      hint={last && `laps of ${sayDate(last.date)}, the last one first`}
    />
  );
}

/** What a review's own lap is called: with its day, or as one that is gone. */
export function heldName({ lapId }: LookedAt, held: ReviewedSession | undefined): string {
  if (held === undefined) return "a lap that is gone";
  const lap = held.laps.find((one) => one.lapId === lapId);
  const name = lapId === undefined ? "the usual lap" : (lap?.name ?? "a lap that is gone");
  return `${sayDate(held.date)}, ${name}`;
}
