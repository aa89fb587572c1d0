import type { Fields } from "#db";
import type { RigSettings } from "#domain";

/** A new record: everything as in another one, but what is said; nothing known where there is no other. */
export function recordFrom(
  rig: RigSettings | undefined,
  said: Partial<Fields<RigSettings>> & Pick<RigSettings, "from">,
): Fields<RigSettings> {
  const { screen = {}, view = {}, wheel = {}, pedals = {}, seat = {} } = rig ?? {};
  return { screen, view, wheel, pedals, seat, name: "", note: "", ...said };
}
