import fc from "fast-check";
import { expect, test } from "vitest";
import { type Needs, oneRequest } from "../../../src/state/oneRequest.ts";

/** A session has ended, and all that could be asked for is needed. */
const all: Needs = {
  hasEnded: true,
  folder: "stopped",
  hasNews: true,
  isBackupDue: true,
  kept: "not kept",
  wasAskedToKeep: false,
  canInstall: true,
  wasAskedToInstall: false,
};

test("the most needed comes first, and each next one only where those before are not needed", () => {
  expect(oneRequest(all)).toBe("allow");
  expect(oneRequest({ ...all, folder: "going" })).toBe("look");
  expect(oneRequest({ ...all, folder: "none" })).toBe("backup");
  const saved = { ...all, folder: "none", isBackupDue: false } as const;
  expect(oneRequest(saved)).toBe("keep");
  expect(oneRequest({ ...saved, wasAskedToKeep: true })).toBe("install");
  expect(oneRequest({ ...saved, wasAskedToKeep: true, wasAskedToInstall: true })).toBeUndefined();
});

test("where a folder takes backups by itself nothing else is asked for", () => {
  expect(oneRequest({ ...all, folder: "going", hasNews: false })).toBeUndefined();
});

test("keeping and the home screen are asked about after a session only, never when the page opens", () => {
  const opened = { ...all, hasEnded: false, folder: "none", isBackupDue: false } as const;
  expect(oneRequest(opened)).toBeUndefined();
  expect(oneRequest({ ...opened, wasAskedToKeep: true })).toBeUndefined();
  expect(oneRequest({ ...opened, isBackupDue: true })).toBe("backup");
});

test("a browser that keeps the data, or does not say, is not asked to", () => {
  const saved = { ...all, folder: "none", isBackupDue: false } as const;
  expect(oneRequest({ ...saved, kept: "kept" })).toBeUndefined();
  expect(oneRequest({ ...saved, kept: "unknown", canInstall: false })).toBeUndefined();
});

test("nothing is asked for that is not needed", () => {
  fc.assert(
    fc.property(
      fc.record<Needs>({
        hasEnded: fc.boolean(),
        folder: fc.constantFrom("none", "going", "stopped"),
        hasNews: fc.boolean(),
        isBackupDue: fc.boolean(),
        kept: fc.constantFrom("kept", "not kept", "unknown"),
        wasAskedToKeep: fc.boolean(),
        canInstall: fc.boolean(),
        wasAskedToInstall: fc.boolean(),
      }),
      (needs) => {
        const request = oneRequest(needs);
        const isNeeded = {
          allow: needs.folder === "stopped",
          look: needs.hasNews && needs.folder !== "none",
          backup: needs.isBackupDue && needs.folder === "none",
          keep: needs.kept === "not kept" && !needs.wasAskedToKeep && needs.hasEnded,
          install: needs.canInstall && !needs.wasAskedToInstall && needs.kept !== "kept" && needs.hasEnded,
        };
        return request === undefined || isNeeded[request];
      },
    ),
  );
});
