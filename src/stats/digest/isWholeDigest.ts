import { isCalendarDate } from "#domain";
import type { SessionDigest } from "./sessionDigest.ts";

const isNumber = (value: unknown) => Number.isFinite(value);
const isNumberOrNone = (value: unknown) => value === undefined || isNumber(value);
const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;
const isListOf = (isRight: (value: unknown) => boolean, value: unknown) =>
  Array.isArray(value) && value.every(isRight);

/** By its tag, because one that was cloned may come from another realm. */
const isTagged = (tag: string) => (value: unknown) =>
  Object.prototype.toString.call(value) === `[object ${tag}]`;

const isFacts = (value: unknown) =>
  isObject(value) && typeof value["effort"] === "string" && typeof value["surface"] === "string";
const isCandidate = (value: unknown) =>
  isObject(value) &&
  typeof value["kind"] === "string" &&
  typeof value["sessionId"] === "string" &&
  isNumber(value["at"]) &&
  isNumber(value["ms"]) &&
  isNumber(value["decimals"]);
const isPace = (value: unknown) => {
  if (!isObject(value)) return false;
  const { laps, exactLaps, consistency, ...figures } = value;
  return (
    isNumber(laps) &&
    isNumber(exactLaps) &&
    isObject(consistency) &&
    (consistency["known"] === true ? isObject(consistency["value"]) : isObject(consistency["reason"])) &&
    Object.values(figures).every(isNumberOrNone)
  );
};

const needs: { readonly [F in keyof SessionDigest]: (value: unknown) => boolean } = {
  methodVersion: isNumber,
  settlingLaps: isNumber,
  displayDecimals: isNumber,
  sessionId: (value) => typeof value === "string",
  comboId: (value) => typeof value === "string",
  date: (value) => typeof value === "string" && isCalendarDate(value),
  startedAt: isNumber,
  focus: (value) => typeof value === "string",
  targetMs: isNumberOrNone,
  times: isTagged("Int32Array"),
  places: isTagged("Uint8Array"),
  worths: isTagged("Uint8Array"),
  exact: isTagged("Uint8Array"),
  odd: (value) => isListOf(isNumber, value),
  runs: isTagged("Uint16Array"),
  runFacts: (value) => isListOf(isFacts, value),
  sectorCount: isNumber,
  sectors: isTagged("Int32Array"),
  counts: (value) => isObject(value) && isNumber(value["driven"]) && Object.values(value).every(isNumber),
  guestLaps: isNumber,
  mistakes: isNumber,
  timedDriven: isNumber,
  timed: isNumber,
  clean: isNumber,
  pace: isPace,
  bestClean: (value) => value === undefined || isCandidate(value),
  bestCandidates: (value) => isListOf(isCandidate, value),
  drivingMs: isNumber,
  sittingMs: isNumberOrNone,
};

/**
 * Whether a stored value is a digest that figures can be made of: the browser may hold anything, and what is derived can be
 * derived again.
 */
export function isWholeDigest(value: unknown): value is SessionDigest {
  if (!isObject(value) || !Object.entries(needs).every(([field, isRight]) => isRight(value[field])))
    return false;
  const { times, places, worths, exact, runs, sectors, sectorCount } = value as unknown as SessionDigest;
  const laps = times.length;
  const isEach = [places, worths, exact, runs].every((list) => list.length === laps);
  return isEach && sectors.length === laps * sectorCount;
}
