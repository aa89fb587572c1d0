import type { CSSProperties } from "react";
import { type Corner, type GapPlace, type GapScale, gapPlaces } from "#domain";
import type { SeenCorner } from "#entry";
import { Button } from "#ui/Button.tsx";
import { saySeenGap, saySeenGapHere } from "#words";
import styles from "./CrossSections.module.css";
import { type CrossSection, crossSection, stepsOf } from "./crossSection.ts";
import { RoadDrawing } from "./RoadDrawing.tsx";

interface CrossSectionsProps {
  readonly corner: Corner;
  readonly seen: SeenCorner;
  readonly scale: GapScale;
  /** Undefined: nobody looked. */
  readonly onGap: (place: GapPlace, metres: number | undefined) => void;
  /** The line cannot be read: nothing can be moved until it can. */
  readonly isHeld: boolean;
}

const titles: Readonly<Record<GapPlace, string>> = { entry: "Entry", apex: "Apex", exit: "Exit" };

/** The road at entry, apex and exit, one under the other, each with the car on it that a finger or the arrow keys move. */
export function CrossSections({ corner, seen, scale, onGap, isHeld }: CrossSectionsProps) {
  const sections = gapPlaces.map((place) => crossSection(place, corner, scale.carWidth));
  const isAssumed = sections.some((section) => section.isAssumed);
  return (
    <section aria-label="Across the road" className={styles["sections"]}>
      {sections.map((section) => (
        <Section
          key={section.place}
          section={section}
          gap={seen[section.place]}
          scale={scale}
          onGap={(metres) => onGap(section.place, metres)}
          isHeld={isHeld}
        />
      ))}
      <p className={styles["about"]}>
        Seen along the road, to scale{isAssumed && "; the road’s width is assumed"}. Drag the car, a quarter
        of its width a step.
      </p>
    </section>
  );
}

interface SectionProps {
  readonly section: CrossSection;
  readonly gap: number | undefined;
  readonly scale: GapScale;
  readonly onGap: (metres: number | undefined) => void;
  readonly isHeld: boolean;
}

function Section({ section, gap, scale, onGap, isHeld }: SectionProps) {
  const { place, width, carWidth, from } = section;
  const { least, most } = stepsOf(section);
  const quarter = carWidth / 4;
  const steps =
    gap === undefined
      ? Math.round((least + most + 4) / 2)
      : Math.round(Math.min(Math.max(gap / quarter, least), most));
  const say = (text: string) => onGap(Number((Number(text) * quarter).toPrecision(12)));
  const [measured, other] = place === "apex" ? ["inside", "outside"] : ["outside", "inside"];
  const size = {
    "--reach": (width + carWidth) / (width + 2 * carWidth),
    "--car": carWidth / (width + carWidth),
  };
  return (
    <div className={styles["section"]}>
      <div className={styles["head"]}>
        <span className={styles["title"]}>{titles[place]}</span>
        <span className={styles["said"]}>
          {gap === undefined ? "not looked at" : saySeenGapHere(gap, scale)}
        </span>
        {gap !== undefined && !isHeld && (
          <Button
            variant="quiet"
            aria-label={`Clear ${place}`}
            className={styles["clear"]}
            onClick={() => onGap(undefined)}
          >
            clear
          </Button>
        )}
      </div>
      <div className={styles["stage"]} style={size as CSSProperties}>
        <RoadDrawing section={section} gap={gap} />
        <p aria-hidden="true" className={styles["ends"]} data-from={from}>
          <span>{measured} edge</span>
          <span>{other}</span>
        </p>
        <div className={styles["reach"]} data-from={from}>
          <input
            type="range"
            min={least}
            max={most}
            step={1}
            value={steps}
            disabled={isHeld}
            aria-label={`Road left at ${place === "apex" ? "the apex" : place}`}
            aria-valuetext={gap === undefined ? "not looked at" : saySeenGap(place, gap, scale)}
            className={styles["slider"]}
            onChange={(event) => say(event.target.value)}
            // Touched where it stands, it does not change: it is said all the same.
            onPointerUp={(event) => gap === undefined && say(event.currentTarget.value)}
          />
        </div>
      </div>
    </div>
  );
}
