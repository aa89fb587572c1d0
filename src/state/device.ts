import { create } from "zustand";
import type { CalendarDate, GapUnit, Id } from "#domain";

export type Theme = "system" | "light" | "dark";

/** What belongs to this device and not to a logbook. */
export interface Device {
  readonly theme: Theme;
  /** Name of the database of the logbook opened last. */
  readonly logbook?: string;
  /** Hash of the address left last. */
  readonly address?: string;
  /** Hash of the review of one combo that was looked at last, and the questions that stood open there. */
  readonly review?: string;
  readonly reviewOpen?: readonly string[];
  /** The pad of keys: shown on touch screens unless the driver chose. */
  readonly pad: "auto" | "shown" | "hidden";
  /** Digits typed outside all fields on Log: caught by the entry line, or left to the browser. */
  readonly digits: "caught" | "left";
  /** What is known of each logbook outside its database, to notice when a browser has cleared it. */
  readonly markers: Readonly<Record<string, Marker>>;
  /** The browser's answer when asked to keep the data for good. */
  readonly askedToPersist?: boolean;
  /** The driver has been told once of the home screen. */
  readonly toldOfHomeScreen?: boolean;
  /** The caution of wheels, and of health, has been read: it is folded to a line where it may be. */
  readonly cautionsRead?: readonly string[];
  /** The corners to be worked on that practice day, with that combo. */
  readonly cornersTonight?: CornersTonight;
  /** How the gaps of a replay are typed; car widths unless the driver chose. */
  readonly gapUnit?: GapUnit;
  /** Sessions in which a rig test was put off to another evening. */
  readonly testsPutOff?: readonly Id[];
  /** How imported tables were matched, the last one first. */
  readonly tables?: readonly MatchedTable[];
}

/** Corners chosen for one practice day; another day, or another combo, knows nothing of them. */
export interface CornersTonight {
  readonly comboId: Id;
  readonly day: CalendarDate;
  readonly numbers: readonly number[];
}

/** How a table was matched, to be found again by the names of its columns. */
export interface MatchedTable {
  readonly signature: string;
  readonly columns: readonly string[];
  readonly dateOrder?: string;
  readonly decimal?: string;
  readonly wholeNumbers?: string;
}

export interface Marker {
  readonly sessions: number;
  readonly lastBackupAt?: number;
}

const key = "lap-ledger";
const fresh: Device = { theme: "system", pad: "auto", digits: "caught", markers: {} };

interface DeviceStore extends Device {
  /** Changes fields of what is stored now, which another tab may have changed since this one read it. */
  readonly change: (patch: Partial<Device> | ((now: Device) => Partial<Device>)) => void;
  /** False where the browser lets the page store nothing. */
  readonly isStored: boolean;
}

/** The choices of this device, mirrored to local storage. */
export const useDevice = create<DeviceStore>((set, get) => ({
  ...read(),
  change: (patch) => {
    const { change: _, isStored: __, ...held } = get();
    const { isStored, ...stored } = read();
    const now: Device = isStored ? stored : held;
    const device = { ...now, ...(typeof patch === "function" ? patch(now) : patch) };
    set({ ...device, isStored: write(device) });
  },
}));

/** Forgets what is known of a logbook that is no longer in this browser. */
export function forgetMarker(name: string): void {
  useDevice.getState().change(({ markers }) => ({
    markers: Object.fromEntries(Object.entries(markers).filter(([of]) => of !== name)),
  }));
}

/** Removes the choices of this device from local storage; false when the browser does not let it. */
export function forgetDevice(): boolean {
  try {
    window.localStorage.removeItem(key);
    return window.localStorage.getItem(key) === null;
  } catch {
    return false;
  }
}

function read(): Device & { isStored: boolean } {
  try {
    const text = window.localStorage.getItem(key);
    const stored: unknown = text === null ? {} : JSON.parse(text);
    return { ...fresh, ...(typeof stored === "object" ? stored : {}), isStored: true };
  } catch {
    return { ...fresh, isStored: false };
  }
}

function write(device: Device): boolean {
  try {
    window.localStorage.setItem(key, JSON.stringify(device));
    return true;
  } catch {
    return false;
  }
}
