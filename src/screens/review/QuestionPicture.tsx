import { SmallBars } from "#charts/small/SmallBars.tsx";
import { SmallColumns } from "#charts/small/SmallColumns.tsx";
import { SmallLine } from "#charts/small/SmallLine.tsx";
import { SmallRange } from "#charts/small/SmallRange.tsx";
import { accountLines } from "#stats";
import { isClear, rigAnswerShift } from "#words";
import type { Looked } from "./looked.ts";
import { lapsByWeek } from "./periods.ts";
import {
  consistencyOf,
  dayNumber,
  differenceRows,
  isCurveDrawn,
  leastShown,
  levelIn,
} from "./reviewCharts.ts";

/** Sessions from which on a line through them is drawn. */
const enoughForLine = 4;

/** The small picture of each question: it answers while all else is hidden. */
export const questionPictures = {
  faster: FasterPicture,
  steadier: SteadierPicture,
  time: TimePicture,
  different: DifferentPicture,
  rig: RigPicture,
  practised: PractisedPicture,
} as const;

interface PictureProps {
  readonly looked: Looked;
}

function FasterPicture({ looked: { review, days } }: PictureProps) {
  if (isCurveDrawn(review.curve))
    return (
      <SmallLine
        leastSpan={leastShown * review.curve.value.now.mid}
        points={levelIn(review.curve.value.line, days).map(({ date, mid, low, high }) => ({
          x: dayNumber(date),
          mid,
          low,
          high,
        }))}
      />
    );
  const usual = review.points.flatMap(({ date, isPresentPage, median }) =>
    isPresentPage && median !== undefined ? [{ x: dayNumber(date), mid: median }] : [],
  );
  return <SmallLine points={usual} isDots />;
}

function SteadierPicture({ looked: { review } }: PictureProps) {
  const points = consistencyOf(review).flatMap(({ date, isPresentPage, scatterPercent, intervalPercent }) =>
    !isPresentPage || scatterPercent === undefined
      ? []
      : [
          {
            x: dayNumber(date),
            mid: scatterPercent,
            low: intervalPercent?.[0],
            high: intervalPercent?.[1],
          },
        ],
  );
  const isFound = review.steadiness.known && review.steadiness.value.finding !== "no clear change";
  return <SmallLine points={points} isDots={points.length < enoughForLine} isChance={!isFound} />;
}

function TimePicture({ looked: { review } }: PictureProps) {
  const { account } = review;
  if (!account.known) return null;
  return <SmallBars values={accountLines.map((line) => account.value[line])} />;
}

/** Of what the answer is about: the weeks before where that is clear or all there is to tell, else late laps against early ones. */
function DifferentPicture({ looked: { review } }: PictureProps) {
  const { shift, thirds, against } = review;
  if (against.known && shift.known && (isClear(shift.value) || !thirds.known)) {
    const { estimate, low, high } = shift.value;
    return <SmallRange value={estimate} low={low} high={high} />;
  }
  const [first] = differenceRows(review);
  return first === undefined ? null : <SmallRange value={first.value} low={first.low} high={first.high} />;
}

/** The difference that the latest change made. */
function RigPicture({ looked: { rig } }: PictureProps) {
  const shift = rig[0] && rigAnswerShift(rig[0]);
  return shift === undefined ? null : <SmallRange value={shift.estimate} low={shift.low} high={shift.high} />;
}

function PractisedPicture({ looked: { review, days, today } }: PictureProps) {
  return <SmallColumns values={lapsByWeek(review.practice.days, days, today)} />;
}
