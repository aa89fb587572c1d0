import { type CalendarDate, daysBetween } from "#domain";
import { datedBests } from "#stats";
import type { Book } from "./book.ts";
import type { ComboKey } from "./combos.ts";
import { pageDigests } from "./pageDigests.ts";
import { firstDay, lastDay } from "./season.ts";

/** One session of the picture: days since the first day of the demo, quartiles and median of its pace laps in ms. */
export interface PictureSession {
  readonly day: number;
  readonly lower: number;
  readonly usual: number;
  readonly upper: number;
}

/** What the first page draws of the demo: the sessions of the combo that improves, and the steps of its PB. */
export interface Picture {
  readonly about: string;
  readonly days: number;
  readonly sessions: readonly PictureSession[];
  readonly bests: readonly { readonly day: number; readonly ms: number }[];
}

const drawn: ComboKey = "ringHatch";

/** The picture of a book, by the app's own figures. */
export function pictureOf({ season }: Book): Picture {
  const digests = pageDigests(season, drawn, lastDay);
  const dayOf = (date: CalendarDate) => daysBetween(firstDay, date);
  return {
    about: "What the first page draws of the demo. Written by npm run demo, never by hand.",
    days: dayOf(lastDay),
    sessions: digests.flatMap(
      ({ date, pace: { lowerQuartile: lower, median: usual, upperQuartile: upper } }) =>
        lower === undefined || usual === undefined || upper === undefined
          ? []
          : [
              {
                day: dayOf(date),
                lower: Math.round(lower),
                usual: Math.round(usual),
                upper: Math.round(upper),
              },
            ],
    ),
    bests: datedBests(digests).map(({ date, ms }) => ({ day: dayOf(date), ms })),
  };
}
