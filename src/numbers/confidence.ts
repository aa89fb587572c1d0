/** Confidence of every interval the app shows, a fraction. */
export const CONFIDENCE = 0.9;

/** Very likely one way: that interval lies wholly on one side. */
export const VERY_LIKELY = (1 + CONFIDENCE) / 2;
