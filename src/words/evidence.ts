/** What a suggestion rests on, in plain words; best first. */
export type Evidence = "measured on you" | "fair evidence" | "worth a try" | "common practice, no source";
