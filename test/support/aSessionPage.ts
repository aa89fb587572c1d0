import { defaultPreferences, preferencesId } from "#db";
import type { Run } from "#domain";
import type { SessionData } from "../../src/screens/log/session/useSession.ts";

const stamps = { createdAt: 1, updatedAt: 1 };

/** The rows that the page of session "s" rests on, of combo "k", with these runs. */
export function aSessionPage(runs: readonly Run[], fields: Partial<SessionData> = {}): SessionData {
  return {
    combo: { id: "k", carId: "c", layoutId: "l", ...stamps },
    car: { id: "c", name: "Club hatch", ...stamps },
    track: { id: "t", name: "Varnholt Ring", ...stamps },
    layout: { id: "l", trackId: "t", name: "", corners: [], ...stamps },
    session: {
      id: "s",
      comboId: "k",
      startedAt: 1,
      isTimeOfDayKnown: true,
      date: "2026-11-25",
      zone: "UTC",
      focus: "free",
      note: "",
      ...stamps,
    },
    runs,
    unreadableRuns: [],
    preferences: { id: preferencesId, ...defaultPreferences, ...stamps },
    page: { from: 0, to: Number.POSITIVE_INFINITY },
    targets: [],
    references: [],
    rigs: [],
    ...fields,
  };
}
