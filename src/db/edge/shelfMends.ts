import { isSayable } from "#domain";
import { isCount, isObject, isText } from "./kinds.ts";
import { type Mends, orGone, orNone } from "./mendReads.ts";

const isDay = (value: unknown) => isText(value) && /^\d{4}-\d\d-\d\d$/.test(value);
const isDays = (value: unknown) => Array.isArray(value) && value.every(isDay);
const isMap = (value: unknown) => value instanceof Map;
const isTexts = (value: unknown) => isObject(value) && Object.values(value).every(isText);
const oneOf = (...words: readonly string[]) => {
  return (value: unknown) => words.includes(value as string);
};
const zero = () => 0;
const noText = () => "";

/**
 * What the page needs of each row of the shelf. None of it was typed but titles and drafts, so a value that cannot be right is
 * gone around in its place: no logbook is out of reach because the list of logbooks is damaged.
 */
export const shelfMends: Mends = {
  logbooks: {
    title: [isText, () => "My logbook"],
    kind: [oneOf("own", "demo"), () => "own"],
    createdAt: [isSayable, zero],
    lastOpened: [isSayable, zero],
    turn: orNone(isCount),
    lastBackupAt: orNone(isSayable),
    lapsSinceBackup: [isCount, zero],
    openedOn: [isDays, () => []],
    daysOpened: orNone(isCount),
    purgedOn: orNone(isDay),
    toldAhead: orNone(isSayable),
  },
  drafts: { text: [isText, noText], tab: orNone(isText), at: orNone(isSayable) },
  kept: {
    title: [isText, noText],
    madeAt: [isSayable, zero],
    n: orNone(isCount),
    mark: orNone(Number.isFinite),
    openDay: orNone(isCount),
    why: [oneOf("session", "merge", "replace"), () => "replace"],
    sessions: [isCount, zero],
    laps: [isCount, zero],
    bytes: [isCount, zero],
  },
  folders: {
    handle: orGone(isObject),
    tag: [isText, noText],
    lastGoodAt: orNone(isSayable),
    lastFile: orNone(isText),
    stopped: orNone(isText),
    seen: [isTexts, () => ({})],
  },
  unlisted: { since: [isSayable, zero], seenOn: orNone(isDay) },
  sent: { at: [isSayable, zero], marks: [isMap, () => new Map()] },
  deleted: { waiting: [isMap, () => new Map()] },
};
