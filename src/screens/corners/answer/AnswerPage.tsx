import { CornerOrder } from "#charts/corners/CornerOrder.tsx";
import type { CalendarDate, Id, Layout } from "#domain";
import { printAddress } from "#state/address.ts";
import type { CornersReport, CornerWorth } from "#stats";
import { Columns } from "#ui/Columns.tsx";
import { Part } from "#ui/Part.tsx";
import { cornerChangeInShort, isWorthTelling, sayCounted, sayRangeInShort, sayWorth } from "#words";
import styles from "./Answer.module.css";
import { ChangeSince } from "./ChangeSince.tsx";
import { FirstCorner } from "./FirstCorner.tsx";
import { InAll } from "./InAll.tsx";
import { LapOrder } from "./LapOrder.tsx";
import { RemarksTable } from "./RemarksTable.tsx";

interface AnswerPageProps {
  readonly comboId: Id;
  readonly layout: Layout;
  readonly report: CornersReport;
  readonly today: CalendarDate;
}

/** Which corner first, what each is worth, and what became of it; a corner's geometry stands behind its number. */
export function AnswerPage({ comboId, layout, report, today }: AnswerPageProps) {
  const { corners, order } = report;
  const hrefOf = (corner: number) => printAddress({ place: "corners", comboId, corner });
  const beside = (
    <div className={styles["beside"]}>
      <ChangeSince report={report} today={today} />
      <RemarksTable report={report} />
    </div>
  );
  const inSeconds = order
    .flatMap((number) => corners.filter((corner) => corner.number === number))
    .flatMap((corner) => inOrder(corner, hrefOf(corner.number), today));
  return (
    <>
      <FirstCorner comboId={comboId} report={report} />
      {corners.length > 0 && <LapOrder comboId={comboId} layout={layout} report={report} today={today} />}
      {inSeconds.length === 0 ? (
        beside
      ) : (
        <Columns share={7}>
          <Part title="In order of seconds" ruled aside="seconds a lap">
            <CornerOrder corners={inSeconds} />
            <InAll report={report} />
          </Part>
          {beside}
        </Columns>
      )}
    </>
  );
}

function inOrder({ number, name, worth, mistakes, change }: CornerWorth, href: string, today: CalendarDate) {
  if (worth === undefined || !isWorthTelling(worth)) return [];
  return [
    {
      number,
      name,
      href,
      worth,
      mistakesMs: Math.max(0, mistakes.ms ?? 0),
      seconds: sayWorth({ worth }),
      range: worth.low === worth.high ? undefined : sayRangeInShort(worth),
      said: [
        ...(mistakes.counts.length === 0 ? [] : [sayCounted(mistakes.counts)]),
        ...(change === undefined ? [] : [cornerChangeInShort(change, today)]),
      ],
    },
  ];
}
