import type { Migration } from "./migration.ts";
import { v1 } from "./v1.ts";
import { v2 } from "./v2.ts";
import { v3 } from "./v3.ts";
import { v4 } from "./v4.ts";

/** Every schema ever released, oldest first, without gaps. */
export const migrations: readonly Migration[] = [v1, v2, v3, v4];

/** The oldest schema a backup may have. */
export const lowestSchema = 1;
/** The schema this app writes. */
export const newestSchema = 4;
