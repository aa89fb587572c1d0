export * from "./figure.ts";
export * from "./lapSets.ts";
export * from "./problem.ts";
export * from "./remarks.ts";
export * from "./rows.ts";
