import { type CSSProperties, useRef } from "react";
import { type Corner, type GapPlace, type GapScale, gapPlaces } from "#domain";
import type { SeenCorner } from "#entry";
import { Button } from "#ui/Button.tsx";
import { sayGap, sayGapHere } from "#words";
import styles from "./CrossSections.module.css";
import { type CrossSection, crossSection, stepsOf } from "./crossSection.ts";
import { RoadDrawing } from "./RoadDrawing.tsx";
import { useSideways } from "./useSideways.ts";

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
  const say = (step: number) => onGap(Number((step * quarter).toPrecision(12)));
  const slider = useRef<HTMLInputElement>(null);
  /** What stood there when the finger came: a move is measured from it. */
  const begun = useRef<{ readonly gap: number | undefined; readonly steps: number }>({ gap, steps });
  const hand = useSideways({
    onTake: (from, now) => {
      const input = slider.current;
      if (input === null || isHeld) return;
      const { left, right, width: all } = input.getBoundingClientRect();
      const car = (carWidth / (width + carWidth)) * all;
      const aStep = (all - car) / (most - least);
      const along = (x: number) => (section.from === "left" ? x - left : right - x) - car / 2;
      const inSteps = (pixels: number) => (aStep > 0 ? pixels / aStep : 0);
      const stood = begun.current.steps;
      // Taken hold of by the car, it stays under the finger; beside it, it comes to where the finger is.
      const offset = along(from) - (stood - least) * aStep;
      const aim = least + inSteps(along(now) - (Math.abs(offset) <= car / 2 ? offset : 0));
      input.focus({ preventScroll: true });
      say(Math.min(Math.max(Math.round(aim), least), most));
    },
    onCancel: () => onGap(begun.current.gap),
  });
  const [measured, other] = place === "apex" ? ["inside", "outside"] : ["outside", "inside"];
  const size = {
    "--reach": (width + carWidth) / (width + 2 * carWidth),
    "--car": carWidth / (width + carWidth),
  };
  return (
    <div className={styles["section"]}>
      <div className={styles["head"]}>
        <span className={styles["title"]}>{titles[place]}</span>
        <span className={styles["said"]}>{gap === undefined ? "not looked at" : sayGapHere(gap, scale)}</span>
        {gap !== undefined && !isHeld && (
          <Button
            variant="quiet"
            aria-label={`Clear ${place}`}
            className={styles["clear"]}
            onClick={() => {
              slider.current?.focus({ preventScroll: true });
              onGap(undefined);
            }}
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
        {/* biome-ignore lint/a11y/noStaticElementInteractions: the slider within has the role and the keys, this only the finger */}
        <div
          className={styles["reach"]}
          data-from={from}
          {...hand}
          onPointerDown={(event) => {
            begun.current = { gap, steps };
            hand.onPointerDown(event);
          }}
          // The slider takes the focus once its car is moved, and nothing else does.
          onMouseDown={(event) => event.preventDefault()}
        >
          <input
            ref={slider}
            type="range"
            min={least}
            max={most}
            step={1}
            value={steps}
            disabled={isHeld}
            aria-label={`Road left at ${place === "apex" ? "the apex" : place}`}
            aria-valuetext={gap === undefined ? "not looked at" : sayGap(place, gap, scale)}
            className={styles["slider"]}
            onChange={(event) => say(Number(event.target.value))}
          />
        </div>
      </div>
    </div>
  );
}
