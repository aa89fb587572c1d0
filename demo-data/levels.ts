import { daysBetween } from "#domain";
import { afterBreak, type ComboKey, type ComboTruth } from "./combos.ts";
import { type Chance, type Driver, driveSession, trueLevel } from "./drivers.ts";

/** Days away after which something is lost. */
const breakDays = 10;

/** How far the driver is on a page of a combo. */
export interface Practice {
  readonly driver: Driver;
  /** Laps driven on the page. */
  readonly laps: number;
  readonly lastDate?: string;
  /** Laps driven on the page when the last break ended. */
  readonly lapsAtBreak?: number;
}

/** The practice as it stands when a session begins on a date. */
export function practiceOn(practice: Practice, date: string): Practice {
  const { lastDate, laps } = practice;
  const isAfterBreak = lastDate !== undefined && daysBetween(lastDate, date) >= breakDays;
  return { ...practice, lastDate: date, ...(isAfterBreak ? { lapsAtBreak: laps } : {}) };
}

/** What a break still costs in the middle of a session, as a share of the lap. */
export function shareOfBreak(combo: ComboKey, { laps, lapsAtBreak }: Practice, lapsNow: number): number {
  if (lapsAtBreak === undefined || combo !== afterBreak.combo) return 0;
  return afterBreak.cost * 2 ** ((lapsAtBreak - laps - lapsNow / 2) / afterBreak.lapsToHalve);
}

/** Levels of a session's laps as they are driven, ms: practice, the form of the evening, and each lap's noise. */
export function driveLevels(combo: ComboKey, practice: Practice, laps: number, chance: Chance): number[] {
  const extra = shareOfBreak(combo, practice, laps);
  return driveSession(practice.driver, { lapsBefore: practice.laps, laps, extra }, chance);
}

/** Median of the lap noise, in its standard deviations: 1.67835 is the median of a gamma variable of shape 2. */
const medianOfNoise = (1.678_346_990_016_661 - 2) / Math.SQRT2;

/** True median lap of a driver at a level of practice with a state of the rig, ms. */
export function trueMedian(driver: Driver, laps: number, share: number): number {
  return trueLevel(driver, laps) + driver.baseMs * (share + driver.lapNoise * medianOfNoise);
}

/** The driver of one page of a combo. */
export function driverOfPage({ drivers }: ComboTruth, page: number): Driver {
  return drivers[page] ?? drivers[0];
}
