import { asSentence } from "./counted.ts";

/**
 * Why a figure is not given, from its reason.
 * @example sayTooFew("needs 5 pace laps, has 3") // "Not enough pace laps yet: 3 of 5"
 * @example sayTooFew("no target for this session") // "No target for this session"
 */
export function sayTooFew(reason: string): string {
  const needs = /^needs (\d+) (.+), has (\d+)(.*)$/.exec(reason);
  if (needs === null) return asSentence(reason);
  const [, least = "", things = "", has = "", where = ""] = needs;
  return least === "1" ? `No ${things} yet${where}` : `Not enough ${things} yet: ${has} of ${least}${where}`;
}

/**
 * The same in a cell of a table, where the head says of what.
 * @example sayMissing("needs 4 sessions with 3 clean laps of each, has 1") // "too few sessions: 1 of 4"
 */
export function sayMissing(reason: string): string {
  const needs = /^needs (\d+) (\w+).*, has (\d+)/.exec(reason);
  return needs === null ? asSentence(reason) : `too few ${needs[2]}: ${needs[3]} of ${needs[1]}`;
}
