import { useSyncExternalStore } from "react";
import type { CalendarDate, Id } from "#domain";

/** How much history a review looks at: the last n days, all of it, or chosen dates (both ends included). */
export type Period =
  | { readonly kind: "4w" | "12w" | "year" | "all" }
  | { readonly kind: "dates"; readonly from: CalendarDate; readonly to: CalendarDate };

export const places = ["log", "review", "targets", "rig", "corners", "data"] as const;
export type Place = (typeof places)[number];

/** Where the driver is. The hash of the address is its only home, so reload, back and a bookmark work. */
export type Address =
  | { readonly place: "log"; readonly sessionId?: Id }
  | { readonly place: "review"; readonly comboId?: Id; readonly period: Period }
  | { readonly place: "targets"; readonly comboId?: Id }
  | { readonly place: "rig"; readonly rigId?: Id }
  | { readonly place: "corners"; readonly comboId?: Id }
  | { readonly place: "data" };

const idPattern = /^[0-9a-f-]{36}$/;
const datePattern = /^\d{4}-\d{2}-\d{2}$/;

/** Reads the hash of an address. Whatever it does not understand leads to Log. */
export function parseAddress(hash: string): Address {
  const [path = "", query = ""] = hash.replace(/^#?\/?/, "").split("?");
  const [place, second] = path.split("/");
  const id = second !== undefined && idPattern.test(second) ? second : undefined;
  switch (place) {
    case "review":
      return { place, ...(id && { comboId: id }), period: parsePeriod(new URLSearchParams(query)) };
    case "targets":
    case "corners":
      return { place, ...(id && { comboId: id }) };
    case "rig":
      return { place, ...(id && { rigId: id }) };
    case "data":
      return { place };
    default:
      return { place: "log", ...(place === "log" && id && { sessionId: id }) };
  }
}

function parsePeriod(query: URLSearchParams): Period {
  const kind = query.get("period");
  if (kind === "4w" || kind === "year" || kind === "all") return { kind };
  const from = query.get("from") ?? "";
  const to = query.get("to") ?? "";
  if (datePattern.test(from) && datePattern.test(to) && from <= to) return { kind: "dates", from, to };
  return { kind: "12w" };
}

/** The hash of an address; `parseAddress` gives the same address back. */
export function printAddress(address: Address): string {
  switch (address.place) {
    case "log":
      return join("log", address.sessionId);
    case "review": {
      const { period } = address;
      const query = period.kind === "dates" ? `from=${period.from}&to=${period.to}` : `period=${period.kind}`;
      return `${join("review", address.comboId)}${period.kind === "12w" ? "" : `?${query}`}`;
    }
    case "targets":
    case "corners":
      return join(address.place, address.comboId);
    case "rig":
      return join("rig", address.rigId);
    case "data":
      return join("data", undefined);
  }
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
