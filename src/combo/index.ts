/** What is true of a combo: its pages, its targets, what its sessions are measured against, what its runs are called. */
export * from "./accountTarget.ts";
export * from "./pages.ts";
export * from "./runNumbers.ts";
export * from "./standing.ts";
export * from "./targetsInForce.ts";
export * from "./targetThen.ts";
