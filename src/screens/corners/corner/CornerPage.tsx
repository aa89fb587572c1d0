import type { CalendarDate, Id, Layout } from "#domain";
import { cornerCost } from "#physics";
import { printAddress } from "#state/address.ts";
import { type CornersReport, cornerBefore } from "#stats";
import { Columns } from "#ui/Columns.tsx";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import {
  asSentence,
  cornerChangeInShort,
  cornerHabitsSay,
  cornerMistakesSay,
  cornerReading,
  cornerTitle,
  sayWhyCorners,
} from "#words";
import { Assumed } from "./Assumed.tsx";
import { apexPlaces } from "./apexPlaces.ts";
import styles from "./Corner.module.css";
import { CornerDrills } from "./CornerDrills.tsx";
import { CornerFigures } from "./CornerFigures.tsx";
import { FromAbove } from "./FromAbove.tsx";
import { SlowInFastOut } from "./SlowInFastOut.tsx";

interface CornerPageProps {
  readonly comboId: Id;
  readonly comboName: string;
  readonly layout: Layout;
  readonly report: CornersReport;
  readonly number: number;
  readonly today: CalendarDate;
}

/** One corner: what it gives away, drawn to scale, what went wrong there, and where its apex is best. */
export function CornerPage({ comboId, comboName, layout, report, number, today }: CornerPageProps) {
  const at = report.corners.findIndex((corner) => corner.number === number);
  const corner = report.corners[at];
  const to = (other: number) => printAddress({ place: "corners", comboId, corner: other });
  if (corner === undefined)
    return (
      <p>
        There is no corner {number} in this layout.{" "}
        <a href={printAddress({ place: "corners", comboId })}>All corners</a>
      </p>
    );
  const { name, unused, mistakes, habits, change, facts, why } = corner;
  const gaps = unused.known ? unused.value.gaps : {};
  const cost = cornerCost(facts, gaps);
  const apexes = cost.known ? apexPlaces(cost.value.corner) : cost;
  const joined = joinedTo(number, layout.corners);
  const direction = layout.corners.find((one) => one.number === number)?.direction;
  // The largest gap and the mistakes are told by themselves.
  const besides = why.filter((one) => one.why !== "largest gap" && one.why !== "mistakes");
  const said = [cornerHabitsSay(habits), change && `${asSentence(cornerChangeInShort(change, today))}.`];
  const [before, after] = [report.corners[at - 1], report.corners[at + 1]];
  return (
    <>
      <header className={styles["head"]}>
        <div className={styles["line"]}>
          <p className={styles["number"]}>
            Corner {number}
            {direction !== undefined && `, ${direction}`}
            {name !== undefined && (
              <>
                {": "}
                <Name>{name}</Name>
              </>
            )}
          </p>
          <nav className={styles["ways"]} aria-label="Corners beside this one">
            <a className={styles["way"]} href={printAddress({ place: "corners", comboId })}>
              All corners
            </a>
            {before && (
              <a className={styles["way"]} href={to(before.number)}>
                Corner {before.number}
              </a>
            )}
            {after && (
              <a className={styles["way"]} href={to(after.number)}>
                Corner {after.number}
              </a>
            )}
          </nav>
        </div>
        <h2 className={styles["title"]}>{cornerTitle(corner)}</h2>
        <p className={styles["reading"]}>
          {cornerReading(corner, cost.known ? cost.value.corner.carWidth : 1)}{" "}
          {cost.known && sayWhyCorners(besides, cost.value.corner.carWidth)}
        </p>
      </header>
      <Columns share={7} onPaper="beside">
        <Part title="From above, to scale" ruled>
          {cost.known && (
            <FromAbove
              cost={cost.value}
              isLookedAt={unused.known}
              direction={direction ?? "right"}
              apexes={apexes.known ? apexes.value : undefined}
            />
          )}
        </Part>
        <div className={styles["beside"]}>
          {unused.known && <CornerFigures unused={unused.value} />}
          <Part title="What went wrong there" ruled>
            <p>{cornerMistakesSay(mistakes, report.sessions)}</p>
            {said.map((sentence) => sentence && <p key={sentence}>{sentence}</p>)}
          </Part>
          <CornerDrills comboId={comboId} comboName={comboName} number={number} today={today} />
          {cost.known && (
            <Assumed comboId={comboId} facts={facts} cost={cost.value} isLookedAt={unused.known} />
          )}
        </div>
      </Columns>
      {cost.known && (
        <Part title="Slow in, fast out" ruled>
          <SlowInFastOut
            corner={cost.value.corner}
            apexes={apexes}
            joined={joined}
            asOf={today}
            fileName={`${comboName} corner ${number} apex`}
          />
        </Part>
      )}
    </>
  );
}

/** Numbers of the corners that follow each other at once here: the one before, and the one after. */
function joinedTo(number: number, corners: Layout["corners"]) {
  const before = cornerBefore(corners, number);
  const isJoinedOn = corners.find((corner) => corner.number === number)?.after === "none";
  const after = corners.find((corner) => cornerBefore(corners, corner.number)?.number === number);
  return {
    before: before?.after === "none" ? before.number : undefined,
    after: isJoinedOn ? after?.number : undefined,
  };
}
