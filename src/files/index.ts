export * from "./backup.ts";
export * from "./fetchBackup.ts";
export * from "./fileName.ts";
export * from "./pack.ts";
export * from "./pick.ts";
export * from "./readText.ts";
export * from "./save.ts";
export * from "./sha256.ts";
