import { afterEach, expect, it, vi } from "vitest";
import { localZone } from "../../../src/live/localZone.ts";

afterEach(() => vi.restoreAllMocks());

it("asks the browser once in one go, and again in the next: the device may have travelled", async () => {
  let zone = "Europe/Berlin";
  const asked = vi.spyOn(Intl.DateTimeFormat.prototype, "resolvedOptions");
  asked.mockImplementation(() => ({ timeZone: zone }) as Intl.ResolvedDateTimeFormatOptions);
  const here = localZone();
  expect([here(), here(), here()]).toEqual(["Europe/Berlin", "Europe/Berlin", "Europe/Berlin"]);
  expect(asked).toHaveBeenCalledTimes(1);
  zone = "Asia/Tokyo";
  await Promise.resolve();
  expect(here()).toBe("Asia/Tokyo");
});
