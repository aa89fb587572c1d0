import { afterEach, expect, it, vi } from "vitest";
import { localZone } from "../../../src/live/localZone.ts";

afterEach(() => vi.restoreAllMocks());

it("follows a device that travels, and asks the browser once a second at most, whichever way its clock is put", () => {
  let [zone, now] = ["Europe/Berlin", 10_000];
  const asked = vi.spyOn(Intl.DateTimeFormat.prototype, "resolvedOptions");
  asked.mockImplementation(() => ({ timeZone: zone }) as Intl.ResolvedDateTimeFormatOptions);
  const here = localZone(() => now);
  expect(here()).toBe("Europe/Berlin");
  zone = "Asia/Tokyo";
  now += 999;
  expect(here()).toBe("Europe/Berlin");
  now += 1;
  expect(here()).toBe("Asia/Tokyo");
  zone = "Europe/Berlin";
  now -= 5_000;
  expect(here()).toBe("Europe/Berlin");
  expect(asked).toHaveBeenCalledTimes(3);
});
