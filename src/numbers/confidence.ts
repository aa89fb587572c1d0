/** Confidence of every interval the app shows, a fraction. */
export const CONFIDENCE = 0.9;
