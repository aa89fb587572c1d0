import { afterEach, expect, it, vi } from "vitest";
import { whenSeen } from "../../../src/live/whenSeen.ts";

afterEach(() => vi.restoreAllMocks());

it("tells when the page gets the focus or is looked at again, not when it is hidden, and no more once it is ended", () => {
  const tell = vi.fn();
  const end = whenSeen(tell);
  window.dispatchEvent(new Event("focus"));
  document.dispatchEvent(new Event("visibilitychange"));
  expect(tell).toHaveBeenCalledTimes(2);
  const state = vi.spyOn(document, "visibilityState", "get").mockReturnValue("hidden");
  document.dispatchEvent(new Event("visibilitychange"));
  expect(tell).toHaveBeenCalledTimes(2);
  state.mockReturnValue("visible");
  end();
  window.dispatchEvent(new Event("focus"));
  document.dispatchEvent(new Event("visibilitychange"));
  expect(tell).toHaveBeenCalledTimes(2);
});
