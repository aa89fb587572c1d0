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

export default defineConfig({
  base: "./",
  plugins: [
    react(),
    rescue,
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
    modulePreload: { polyfill: false },
    // What the page begins with is one file: cut up by what later parts share, it is 4 % larger and 25 requests.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [{ name: "first", tags: ["$initial"], test: (id) => !id.endsWith("/rescue.ts") }],
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
        },
      },
    ],
  },
});
