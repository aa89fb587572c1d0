import { useSyncExternalStore } from "react";
import { type CalendarDate, type Id, isStorableDate, mondayOf, type WeekName } from "#domain";

/** How much history a review looks at: the last n days, all of it, or chosen dates (both ends included). */
export type Period =
  | { readonly kind: "4w" | "12w" | "year" | "all" }
  | { readonly kind: "dates"; readonly from: CalendarDate; readonly to: CalendarDate };

export const places = ["log", "review", "targets", "rig", "corners", "data"] as const;
export type Place = (typeof places)[number];

/** Where the driver is. The hash of the address is its only home, so reload, back and a bookmark work. */
export type Address =
  /** `lapId`: the lap of that session to look at. */
  | { readonly place: "log"; readonly sessionId?: Id; readonly lapId?: Id }
  | ReviewAddress
  | AroundReview
  | TargetsAddress
  | RigAddress
  | CornersAddress
  /** `sendId`: the session that is to be sent to another device; `part`: the part of the page that is asked for. */
  | { readonly place: "data"; readonly sendId?: Id; readonly part?: DataPart };

/** The targets of all combos or of one, or what belongs to them (`part`). */
export interface TargetsAddress {
  readonly place: "targets";
  readonly comboId?: Id;
  readonly part?: TargetsPart;
}

/** `plan`: the next session · `race`: a race distance · `record`: how the app's own forecasts turned out. */
const targetsParts = ["plan", "race", "record"] as const;
export type TargetsPart = (typeof targetsParts)[number];

/** The corners of a combo: the answer, one corner, the table of the layout, or a replay review (`reviewId`: one that is there). */
export interface CornersAddress {
  readonly place: "corners";
  readonly comboId?: Id;
  readonly corner?: number;
  readonly part?: "layout" | "review";
  readonly reviewId?: Id;
}

/** Parts of Data that links and notices lead to. */
const dataParts = [
  "aside",
  "automatic",
  "backup",
  "cautions",
  "deleted",
  "import",
  "logbooks",
  "preferences",
  "restore",
] as const;
export type DataPart = (typeof dataParts)[number];

/** The review of one combo; `isAhead`: with what is to come drawn beside what was driven. */
export interface ReviewAddress {
  readonly place: "review";
  readonly part?: never;
  readonly comboId?: Id;
  readonly period: Period;
  readonly isAhead?: true;
}

/**
 * The rig: the answer, a record (`rigId`), a value that has changed (`change`), one of the sums and the plan of a test (`part`),
 * or one test.
 */
export interface RigAddress {
  readonly place: "rig";
  readonly rigId?: Id;
  readonly change?: RigChange;
  readonly part?: RigPart;
  readonly testId?: Id;
}

/** `screen`: work out the field of view · `wheel`: work out the gain · `plan`: plan a test · `record`: a new record. */
const rigParts = ["screen", "wheel", "plan", "record"] as const;
export type RigPart = (typeof rigParts)[number];

/** A value of the rig that has changed: which one (without it, one is to be picked), and the session to come back to. */
export interface RigChange {
  readonly field?: string;
  readonly sessionId?: Id;
}

/**
 * What stands beside the review of one combo: all combos, the search (`asked` as its query says it), one week (without a name the present one), two runs or
 * two sessions side by side (without ids where an address was cut short).
 */
export type AroundReview =
  | { readonly place: "review"; readonly part: "across" }
  | { readonly place: "review"; readonly part: "search"; readonly asked: string }
  | {
      readonly place: "review";
      readonly part: "compare";
      readonly kind: "run" | "session";
      readonly ids?: readonly [Id, Id];
    }
  | { readonly place: "review"; readonly part: "statement"; readonly week?: WeekName };

const idPattern = /^[0-9a-f-]{36}$/;

/** Reads the hash of an address. Whatever it does not understand leads to Log. */
export function parseAddress(hash: string): Address {
  const [path = "", query = ""] = hash.replace(/^#?\/?/, "").split("?");
  const [place, second] = path.split("/");
  const id = second !== undefined && idPattern.test(second) ? second : undefined;
  switch (place) {
    case "review":
      return (
        parseAround(second, new URLSearchParams(query)) ?? {
          place,
          ...(id && { comboId: id }),
          period: parsePeriod(new URLSearchParams(query)),
          ...(new URLSearchParams(query).get("ahead") === "1" && { isAhead: true as const }),
        }
      );
    case "targets":
      return { place, ...(id && { comboId: id }), ...parsePart(query, targetsParts) };
    case "corners":
      return { place, ...(id && { comboId: id, ...parseCorners(new URLSearchParams(query)) }) };
    case "rig":
      return { place, ...(parseRig(new URLSearchParams(query)) ?? (id && { rigId: id })) };
    case "data":
      return { place, ...(id && { sendId: id }), ...parsePart(query, dataParts) };
    default:
      // A session's address that was cut short is the address of no session, not of the open one.
      return { place: "log", ...(place === "log" && second && { sessionId: second, ...parseLap(query) }) };
  }
}

function parseCorners(query: URLSearchParams): Pick<CornersAddress, "corner" | "part" | "reviewId"> {
  const [part, reviewId = "", corner = ""] = ["part", "of", "corner"].map((key) => query.get(key) ?? "");
  if (part === "layout") return { part };
  if (part === "review") return { part, ...(idPattern.test(reviewId) && { reviewId }) };
  return /^[1-9]\d{0,2}$/.test(corner) ? { corner: Number(corner) } : {};
}

function parseRig(query: URLSearchParams): Omit<RigAddress, "place"> | undefined {
  const change = parseChange(query);
  if (change !== undefined) return { change };
  const testId = query.get("test") ?? "";
  if (idPattern.test(testId)) return { testId };
  const part = rigParts.find((one) => one === query.get("part"));
  return part && { part };
}

const fieldPattern = /^[a-z]{1,20}\.[a-zA-Z]{1,20}$/;

function parseChange(query: URLSearchParams): RigChange | undefined {
  if (!query.has("field")) return undefined;
  const [field, session] = [query.get("field") ?? "", query.get("session") ?? ""];
  return {
    ...(fieldPattern.test(field) && { field }),
    ...(idPattern.test(session) && { sessionId: session }),
  };
}

function parseLap(query: string): { readonly lapId?: Id } {
  const lapId = new URLSearchParams(query).get("lap") ?? "";
  return idPattern.test(lapId) ? { lapId } : {};
}

function parsePart<P extends string>(query: string, parts: readonly P[]): { readonly part?: P } {
  const asked = new URLSearchParams(query).get("part");
  const part = parts.find((one) => one === asked);
  return part === undefined ? {} : { part };
}

function parseAround(part: string | undefined, query: URLSearchParams): AroundReview | undefined {
  if (part === "across") return { place: "review", part };
  if (part === "search") return { place: "review", part, asked: query.toString() };
  if (part === "compare") return { place: "review", part, ...parseCompared(query) };
  if (part !== "statement") return undefined;
  const week = query.get("week") ?? "";
  return { place: "review", part, ...(mondayOf(week) !== undefined && { week }) };
}

function parseCompared(query: URLSearchParams) {
  const kind = query.has("runs") ? "run" : "session";
  const [first = "", second = ""] = (query.get(`${kind}s`) ?? "").split(",");
  const isWhole = idPattern.test(first) && idPattern.test(second);
  return { kind, ...(isWhole && { ids: [first, second] as const }) } as const;
}

function parsePeriod(query: URLSearchParams): Period {
  const kind = query.get("period");
  if (kind === "4w" || kind === "year" || kind === "all") return { kind };
  const from = query.get("from") ?? "";
  const to = query.get("to") ?? "";
  if (isStorableDate(from) && isStorableDate(to) && from <= to) return { kind: "dates", from, to };
  return { kind: "12w" };
}

/** The hash of an address; `parseAddress` gives the same address back. */
export function printAddress(address: Address): string {
  switch (address.place) {
    case "log": {
      const { sessionId, lapId } = address;
      return join("log", sessionId) + (sessionId && lapId ? `?lap=${lapId}` : "");
    }
    case "review": {
      if (address.part !== undefined) return printAround(address);
      const query = [printPeriod(address.period), address.isAhead && "ahead=1"].filter(Boolean).join("&");
      return `${join("review", address.comboId)}${query === "" ? "" : `?${query}`}`;
    }
    case "targets":
      return join("targets", address.comboId) + printPart(address);
    case "corners":
      return join("corners", address.comboId) + printCorners(address);
    case "rig": {
      if (address.part !== undefined) return `#/rig?part=${address.part}`;
      if (address.testId !== undefined) return `#/rig?test=${address.testId}`;
      if (address.change === undefined) return join("rig", address.rigId);
      const { field = "", sessionId } = address.change;
      return `#/rig?field=${field}${sessionId === undefined ? "" : `&session=${sessionId}`}`;
    }
    case "data":
      return join("data", address.sendId) + printPart(address);
  }
}

function printPart({ part }: { readonly part?: string }): string {
  return part === undefined ? "" : `?part=${part}`;
}

function printCorners({ comboId, corner, part, reviewId }: CornersAddress): string {
  if (comboId === undefined) return "";
  if (part === undefined) return corner === undefined ? "" : `?corner=${corner}`;
  return `?part=${part}${part === "review" && reviewId !== undefined ? `&of=${reviewId}` : ""}`;
}

function printPeriod(period: Period): string {
  if (period.kind === "12w") return "";
  return period.kind === "dates" ? `from=${period.from}&to=${period.to}` : `period=${period.kind}`;
}

function printAround(address: AroundReview): string {
  const query =
    address.part === "search"
      ? address.asked
      : address.part === "compare"
        ? `${address.kind}s=${(address.ids ?? []).join(",")}`
        : address.part === "statement" && address.week !== undefined
          ? `week=${address.week}`
          : "";
  return `#/review/${address.part}${query === "" ? "" : `?${query}`}`;
}

const join = (place: Place, id: Id | undefined) => (id === undefined ? `#/${place}` : `#/${place}/${id}`);

/** Goes to an address; `replace` leaves no entry for the back button. */
export function goTo(address: Address, how: "push" | "replace" = "push"): void {
  const hash = printAddress(address);
  if (hash === window.location.hash) return;
  if (how === "replace") {
    window.history.replaceState(null, "", hash);
    window.dispatchEvent(new HashChangeEvent("hashchange"));
  } else {
    window.location.hash = hash;
  }
}

/** The address now, followed as it changes. */
export function useAddress(): Address {
  const hash = useSyncExternalStore(follow, () => window.location.hash);
  return parseAddress(hash);
}

function follow(onChange: () => void): () => void {
  window.addEventListener("hashchange", onChange);
  return () => window.removeEventListener("hashchange", onChange);
}
