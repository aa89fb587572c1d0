import { beforeEach, describe, expect, it, vi } from "vitest";
import { forgetMarker, useDevice } from "#state/device.ts";

const key = "lap-ledger";
const stored = () => JSON.parse(window.localStorage.getItem(key) ?? "{}");
const another = (device: object) =>
  window.localStorage.setItem(key, JSON.stringify({ ...stored(), ...device }));

beforeEach(() => {
  window.localStorage.clear();
  useDevice.setState(useDevice.getInitialState(), true);
});

describe("the choices of this device", () => {
  it("are changed field by field: what another tab has chosen meanwhile stays", () => {
    const { change } = useDevice.getState();
    change({ logbook: "old", theme: "light" });
    another({ logbook: "restored", markers: { restored: { sessions: 3 } } });
    change(({ markers }) => ({ markers: { ...markers, old: { sessions: 2 } } }));
    expect(stored()).toEqual({
      logbook: "restored",
      theme: "light",
      pad: "auto",
      digits: "caught",
      markers: { restored: { sessions: 3 }, old: { sessions: 2 } },
    });
    forgetMarker("old");
    expect(stored().markers).toEqual({ restored: { sessions: 3 } });
    expect(useDevice.getState().markers).toEqual({ restored: { sessions: 3 } });
  });

  it("hold for as long as the page is open where the browser stores nothing", () => {
    const refuse = () => {
      throw new DOMException("no", "SecurityError");
    };
    const spies = (["getItem", "setItem"] as const).map((name) =>
      vi.spyOn(Storage.prototype, name).mockImplementation(refuse),
    );
    const { change } = useDevice.getState();
    change({ theme: "dark" });
    change({ pad: "hidden" });
    expect(useDevice.getState()).toMatchObject({ theme: "dark", pad: "hidden", isStored: false });
    for (const spy of spies) spy.mockRestore();
  });
});
