// Before all else: whichever file comes first, its modules find a browser with a database.
import "fake-indexeddb/auto";

import { describe, inject } from "vitest";

// Each file is a suite, so that what it does before each of its tests is done before no other.
for (const file of inject("mutants").tests) {
  describe(file, async () => {
    await import(/* @vite-ignore */ file);
  });
}
