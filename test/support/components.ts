import "fake-indexeddb/auto";
import "@testing-library/jest-dom/vitest";
import { cleanup } from "@testing-library/react";
import { afterEach } from "vitest";
import { shieldComposition } from "#ui/shieldComposition.ts";

// As src/main.tsx does it before anything is drawn.
shieldComposition(window);
afterEach(cleanup);
