import { useRef } from "react";
import type { ComboWithNames } from "#db";
import {
  assumedCarWidth,
  type CalendarDate,
  type Corner,
  type CornerReview,
  type GapScale,
  type GapUnit,
} from "#domain";
import { readGaps, writeGaps } from "#entry";
import { type Draft, useDraft } from "#live";
import { useDevice } from "#state/device.ts";
import { saySeenCorner } from "#words";
import { useCornersTonight } from "../useCornersTonight.ts";
import type { ToldCorners } from "./CornerNumbers.tsx";
import { roadOf } from "./crossSection.ts";
import { allCorners } from "./reviewCorners.ts";
import { draftOf, draftWords, inOtherUnit, nothingSeen, type ReviewDraft } from "./reviewDraft.ts";

/** A review on its way: what is typed of it, and where the driver is in it. */
export interface Review {
  readonly draft: Draft<ReviewDraft>;
  readonly scale: GapScale;
  /** All corners there are to choose from, in lap order. */
  readonly corners: readonly Corner[];
  /** Numbers of those looked at, in lap order. */
  readonly chosen: readonly number[];
  /** The corner being looked at, or the table of all; undefined where none is chosen. */
  readonly at: ReviewDraft["at"];
  /** The driver has gone from one corner to another since the page was opened. */
  readonly hasMoved: boolean;
  readonly set: (patch: Partial<ReviewDraft>) => void;
  readonly go: (to: ReviewDraft["at"], isFromTable?: boolean) => void;
  readonly choose: (numbers: readonly number[]) => void;
  readonly tell: (told: ToldCorners) => void;
  readonly typeIn: (unit: GapUnit) => void;
  /** What stands in the line of a corner, in words: empty where nothing does, undefined where it cannot be read. */
  readonly sayAt: (number: number) => string | undefined;
  readonly about: (number: number) => Corner;
}

/** So many corners stand ready where they are known by their worth: as many as an evening has room for. */
const mostReady = 3;

/**
 * The review that is typed here, kept at every key. The corners chosen for tonight stand ready, else those worth most, else all.
 * @param before the review that is changed; without one, it is a new one
 * @param order numbers of the corners worth something, the most first
 */
export function useReview(
  { combo, layout, car }: ComboWithNames,
  before: CornerReview | undefined,
  today: CalendarDate,
  order: readonly number[],
): Review {
  const carWidth = car.width ?? assumedCarWidth;
  const deviceUnit = useDevice(({ gapUnit }) => gapUnit ?? "cars");
  const changeDevice = useDevice((device) => device.change);
  const tonight = useCornersTonight(combo.id, today);
  const hasMoved = useRef(false);
  const draft = useDraft<ReviewDraft>(
    `review ${before?.id ?? combo.id}`,
    before === undefined ? nothingSeen : draftOf(before, { unit: deviceUnit, carWidth }),
    draftWords,
  );
  const typed = draft.value;
  const scale: GapScale = { unit: typed.unit ?? deviceUnit, carWidth };
  const named = [...typed.told, ...(before?.corners ?? []).map(({ number }) => number)];
  const corners = allCorners(layout.corners, named);
  const about = (number: number) => corners.find((corner) => corner.number === number) ?? { number };
  const isThere = (number: number) => corners.some((corner) => corner.number === number);
  const ready = (tonight.numbers ?? order.slice(0, mostReady)).filter(isThere);
  const standing = ready.length > 0 ? ready : corners.map(({ number }) => number);
  const chosen = (typed.chosen ?? standing).toSorted((a, b) => a - b);
  const isAt = typed.at === "all" || (typed.at !== undefined && chosen.includes(typed.at));
  const set = (patch: Partial<ReviewDraft>) => draft.set({ ...typed, unit: scale.unit, chosen, ...patch });
  return {
    draft,
    scale,
    corners,
    chosen,
    at: isAt ? typed.at : chosen[0],
    hasMoved: hasMoved.current,
    set,
    go: (to, isFromTable = false) => {
      hasMoved.current = true;
      set({ at: to, isFromTable });
    },
    choose: (numbers) => {
      if (before === undefined) tonight.choose(numbers);
      set({ chosen: numbers });
    },
    tell: (told) =>
      set({
        told: [...new Set([...typed.told, ...told.all])],
        chosen: [...new Set([...(corners.length === 0 ? [] : chosen), ...told.chosen])],
      }),
    typeIn: (unit) => {
      changeDevice({ gapUnit: unit });
      set({ unit, lines: inOtherUnit(typed.lines, scale, unit) });
    },
    sayAt: (number) => {
      const line = typed.lines[number] ?? "";
      const stored = before?.corners.find((corner) => corner.number === number);
      // One that stands as it was stored is stored so, whatever is known of its road by now.
      const isStored = stored !== undefined && line === writeGaps(stored, scale);
      const road = isStored ? undefined : roadOf(about(number), scale.carWidth);
      const reading = readGaps(line, scale, road);
      return reading.ok ? saySeenCorner(reading.seen, scale) : undefined;
    },
    about,
  };
}
