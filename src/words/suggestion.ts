import type { Rests } from "./evidence.ts";

/** What to do next, and why. */
export type WhatNext = Pick<NextRun, "suggestion" | "reason">;

/** One suggestion for the next run. */
export interface NextRun {
  /** What to do. */
  readonly suggestion: string;
  /** The figure it rests on. */
  readonly reason: string;
  readonly evidence: Rests;
  /** How to see in the next run or session whether it worked. */
  readonly check: string;
}
