import react from "@vitejs/plugin-react";
import type { Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { defineConfig } from "vitest/config";

const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; " +
  "font-src 'self'; connect-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'";

/** The development server injects inline scripts and styles, so the policy is for builds only. */
const contentSecurityPolicy: Plugin = {
  name: "content-security-policy",
  apply: "build",
  transformIndexHtml: () => [
    {
      tag: "meta",
      injectTo: "head-prepend",
      attrs: { "http-equiv": "Content-Security-Policy", content: policy },
    },
  ],
};

/** The page's first script: what is left to do when the app's own cannot begin. Apart, so that it fails with nothing else. */
const rescue: Plugin = {
  name: "rescue",
  apply: "build",
  buildStart() {
    this.emitFile({ type: "chunk", id: "src/app/rescue.ts", name: "rescue" });
  },
  transformIndexHtml: (_, { bundle = {} }) =>
    Object.values(bundle).flatMap((file) =>
      file.type === "chunk" && file.name === "rescue"
        ? [
            {
              tag: "script",
              injectTo: "head-prepend" as const,
              attrs: { type: "module", src: `./${file.fileName}` },
            },
          ]
        : [],
    ),
};

/**
 * The workers' script is a part of the page's own build, so that what both need is shipped once. It must not lead to what
 * draws the page: see the groups below.
 */
const worker: Plugin = {
  name: "worker",
  apply: "build",
  enforce: "pre",
  transform(code, id) {
    if (!id.endsWith("/src/live/workerLine.ts")) return undefined;
    const script = this.emitFile({ type: "chunk", id: "src/live/worker.ts", name: "worker" });
    return code.replace('new URL("./worker.ts", import.meta.url)', `import.meta.ROLLUP_FILE_URL_${script}`);
  },
};

/** Whether a worker may come to need a module: the script itself imports it, at once or later. */
function isOfWorker(
  id: string,
  importersOf: (id: string) => readonly string[],
  seen: Set<string> = new Set(),
): boolean {
  if (id.endsWith("/src/live/worker.ts")) return true;
  if (seen.has(id)) return false;
  seen.add(id);
  return importersOf(id).some((importer) => isOfWorker(importer, importersOf, seen));
}

export default defineConfig({
  base: "./",
  plugins: [
    react(),
    rescue,
    worker,
    contentSecurityPolicy,
    VitePWA({
      registerType: "prompt",
      injectRegister: false,
      manifest: {
        name: "Lap Ledger",
        short_name: "Lap Ledger",
        description: "A practice logbook for people who drive racing simulators at home",
        display: "standalone",
        start_url: "./",
        scope: "./",
        background_color: "#F6F2E9",
        theme_color: "#F6F2E9",
        icons: [
          { src: "icon.svg", sizes: "any", type: "image/svg+xml" },
          { src: "icon-192.png", sizes: "192x192", type: "image/png" },
          { src: "icon-512.png", sizes: "512x512", type: "image/png", purpose: "any maskable" },
        ],
      },
      workbox: {
        globPatterns: ["**/*.{js,css,html,svg,png,woff2,webmanifest,json}"],
        cleanupOutdatedCaches: true,
      },
    }),
  ],
  build: {
    target: "es2023",
    modulePreload: {
      polyfill: false,
      // Fetching ahead is done by links in the page, which a worker has not.
      resolveDependencies: (_, files, { hostId }) => (/\/(worker|book)-/.test(hostId) ? [] : files),
    },
    // What the page begins with is two files: what a worker needs too, and the rest. Cut up by what later parts share it
    // was 24, and 4 % larger.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            {
              debugName: "what the page begins with",
              name: (id, bundle) => {
                const importersOf = (of: string) => {
                  const known = bundle.getModuleInfo(of);
                  return known === null ? [] : [...known.importers, ...known.dynamicImporters];
                };
                return isOfWorker(id, importersOf) ? "book" : "first";
              },
              tags: ["$initial"],
              test: (id) => !id.endsWith("/rescue.ts") && !id.endsWith("/live/worker.ts"),
              priority: 2,
            },
            // Small, pure, and wanted by nearly every place and by the workers: one file, not twenty.
            { name: "core", test: /\/src\/(numbers|combo|domain)\//, priority: 1 },
          ],
        },
      },
    },
  },
  worker: { format: "es" },
  // Tests say what is right, not how fast it is; the limits are there only so that a hanging one ends. None is run a
  // second time: one that fails by chance has found something.
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: "core",
          environment: "node",
          include: ["test/{unit,reference,house,calibration}/**/*.test.ts"],
          benchmark: { include: ["test/bench/**/*.bench.ts"] },
          env: { TZ: "Europe/Berlin" },
          testTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          name: "components",
          environment: "jsdom",
          include: ["test/components/**/*.test.tsx"],
          setupFiles: ["test/support/components.ts"],
          env: { TZ: "Europe/Berlin" },
          testTimeout: 60_000,
          // As long as what is looked for on the page is waited for: a busy machine draws slowly.
          expect: { poll: { timeout: 20_000 } },
        },
      },
    ],
  },
});
