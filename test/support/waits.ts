/**
 * Times that are waited for because the time itself is meant, each with its reason, ms. Whatever shows on the page, in the
 * book or on the disk is waited for by itself.
 */

/** A press within 250 ms of another is taken for a key that bounced, or a finger that taps twice. */
export const separateMs = 300;

/** The same lap within a second is asked about: a page that hears of a press so late must go by when it was pressed. */
export const heardLateMs = 1100;

/** What a tab could still hand out is read first after 2 s of rest, and nothing on the page says when. */
export const restMs = 2500;

/**
 * What a page has put into local storage reaches the browser's own process a moment later, and the disk when the browser is
 * closed, or after a minute where it writes often: neither can be seen before.
 */
export const toBrowserMs = 1000;

/** Long enough to catch a page that tries again and again, which shows in nothing but the number of its tries. */
export const retryMs = 500;

/** How often memory is looked at while something is measured. */
export const sampleMs = 100;

/** Lets so much time pass. */
export const pass = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));
