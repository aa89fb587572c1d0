import { rmSync } from "node:fs";
import { buildFolder, serve } from "../support/journeyServer.ts";
import { test as plain } from "../support/journeys.ts";
import { buildWithNextSchema } from "../support/nextSchema.ts";

/** A journey from one version into the next: `swap` has the server go over to a build with the next schema. */
export const test = plain.extend<{ served: { readonly url: string; readonly swap: () => void } }>({
  served: async ({ browserName: _ }, use) => {
    const next = await buildWithNextSchema("works");
    const { url, swap, close } = await serve(buildFolder, "/");
    await use({ url, swap: () => swap(next) });
    await close();
    rmSync(next, { recursive: true, force: true });
  },
  baseURL: async ({ served }, use) => use(served.url),
});
