import type { RigSettings } from "./rows.ts";

type Parts = Pick<RigSettings, "screen" | "view" | "wheel" | "pedals" | "seat">;

/** The value of a record that a rig test names ("wheel.gainPercent"), as it is stored; undefined when it is not known. */
export function rigValue(rig: Parts, field: string): string | number | undefined {
  const [part = "", key = ""] = field.split(".");
  const values = (rig as unknown as Readonly<Record<string, Readonly<Record<string, unknown>> | undefined>>)[
    part
  ];
  const value = values?.[key];
  return typeof value === "string" || typeof value === "number" ? value : undefined;
}
