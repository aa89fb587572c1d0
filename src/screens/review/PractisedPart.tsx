import { secondTicks } from "#charts/axes/secondTicks.ts";
import { PracticeCalendar } from "#charts/calendar/PracticeCalendar.tsx";
import { RangeRowsChart } from "#charts/rangeRows/RangeRowsChart.tsx";
import { formatDelta } from "#domain";
import {
  overnightReading,
  overnightTitle,
  practiceReading,
  practiceTitle,
  sayBreak,
  sayBreaks,
} from "#words";
import styles from "./FasterPart.module.css";
import { LeftOut } from "./LeftOut.tsx";
import type { Looked } from "./looked.ts";
import { NotYet } from "./NotYet.tsx";

/** How much did I practise? The days driven, hours, and what breaks cost. */
export default function PractisedPart({ looked }: { readonly looked: Looked }) {
  const { review, comboName, today, days, before, onSessions } = looked;
  const { practice, breaks } = review;
  const { to = today } = days;
  const [first, last] = [practice.days[0]?.date ?? to, practice.days.at(-1)?.date ?? to];
  return (
    <>
      <PracticeCalendar
        title={practiceTitle(practice)}
        reading={practiceReading(practice, review.before.practice, before)}
        level={3}
        asOf={today}
        fileName={`${comboName} practice`}
        days={practice.days}
        from={first}
        to={last > to ? last : to}
      />
      {breaks.length === 0 ? (
        <p>In this period {sayBreaks(breaks)}.</p>
      ) : (
        <ul className={styles["more"]}>
          {breaks.map((one) => (
            <li key={one.from}>{sayBreak(one)}</li>
          ))}
        </ul>
      )}
      <Overnight looked={looked} />
      <LeftOut onSessions={onSessions}>
        {review.guestLaps > 0 &&
          `${review.guestLaps === 1 ? "1 lap of a guest is" : `${review.guestLaps} laps of guests are`} not counted. `}
        {review.sessionsOnOldPages > 0 &&
          `Sessions of older pages count as practice too: ${review.sessionsOnOldPages} of ${practice.sessions}.`}
      </LeftOut>
    </>
  );
}

/** What stays from one evening to the next. */
function Overnight({ looked: { review, comboName, today } }: { readonly looked: Looked }) {
  const { overnight } = review;
  const [title, reading] = [overnightTitle(review), overnightReading(review)];
  if (!overnight.known) return <NotYet title={title}>{reading}</NotYet>;
  const { estimate, low, high } = overnight.value;
  return (
    <RangeRowsChart
      title={title}
      reading={reading}
      level={3}
      asOf={today}
      fileName={`${comboName} overnight`}
      rows={[
        {
          id: "overnight",
          label: "first laps beside last ones",
          value: estimate / 1000,
          low: low / 1000,
          high: high / 1000,
        },
      ]}
      axisTitle="seconds a lap; line: very likely range; left is faster"
      axisOf={(values) => secondTicks(values)}
      say={(seconds) => `${formatDelta(Math.round(seconds * 1000))} s`}
      csvUnit="s"
      hasZero
    />
  );
}
