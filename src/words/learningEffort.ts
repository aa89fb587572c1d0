import { unbroken } from "#domain";

/** How hard one drives to learn. Common practice, no source. */
export const learningEffort = `learning effort, ${unbroken("70 to 80 %")}`;
