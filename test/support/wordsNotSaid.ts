/** Words that may not appear in a sentence on screen, each with what to say instead. */
export const wordsNotSaid: readonly (readonly [found: RegExp, instead: string])[] = [
  // Certainty has four words only.
  [
    /\b(?:surely|certainly|definitely|undoubtedly|probably|proves?|proven)\b/i,
    "very likely, likely, may be chance",
  ],
  [/\btoo sure\b|\bclear of chance\b/i, "say how likely it is"],
  [/\bfutures?\b(?! laps?)/i, "so many chances in 20"],
  [/\b\d+ (?:of|in) (?:10|100) chances\b|\b\d+ % chance\b/i, "so many chances in 20"],
  [/\b9 in 10 sure\b/i, "very likely"],
  [/\bmostly assumption\b/i, "little more than a guess"],
  // No double negatives.
  [
    /\bnot (?:less|without|never|no|nothing|un(?!der|til|less|it|ion|done)\w+)\b/i,
    "say it the other way round",
  ],
  [/(?:\bNo|[,;:] no) clear (?:change|difference|drift|cost)\b/, "not clearly faster or slower"],
  [/\bcompares? with no\b|\bmoves nothing\b|\benters? no\b/i, "are not compared; no longer moving"],
  // Same thing, same word.
  [/\blevel with (?:your )?PB\b|\bno difference from\b/i, "the same as"],
  [/\bunder (?:the old|the first|your PB)\b|\bs under PB\b|\bPB down\b/i, "faster than"],
  [/\bLargest part\b|\bMostly\b/, "costs most"],
  [/\brepeatability\b/i, "uneven laps"],
  [/\bbalance\b/i, "mean lap"],
  [/\blaps to the pace\b/i, "laps until within 1 % of your best"],
  [/\bfold(?:ed|s)?\b/i, "hide"],
  [/^Rest$/, "Big view"],
  // What the screen has not explained, and what nobody says.
  [/\b(?:lay|laid|lies|lie) beside\b/i, "compare with"],
  [/\bpointed at\b/i, "worth a second look"],
  [/\bstands? behind\b|\bbehind (?:its time|the lap)\b/i, "put it after"],
  [/\bpractice taken out\b/i, "beside practice"],
  [/\bone (?:run|session) in four\b/i, "the number for that many laps"],
  [/\bgained and spent\b/i, "this week against last"],
  [/\bthere is no other\b(?! (?:car|track|combo))/i, "say what to do"],
  [/\bmust all hold\b/i, "results match every field you fill in"],
  [/\bempty all\b/i, "clear"],
  [/\bput this record right\b/i, "correct this record"],
  [/\bA change: begin\b/i, "something changed"],
  [/\bNo target holds\b/i, "no active target"],
  [/\bgood moment\b/i, "save one now"],
  [/\bneighbouring\b/i, "in a row"],
  [/\w!/, "no exclamation marks"],
];

/** What a sentence says that it may not, with what to say instead. */
export function notToSay(sentence: string): string[] {
  return wordsNotSaid.flatMap(([pattern, instead]) => {
    const found = pattern.exec(sentence)?.[0];
    return found === undefined ? [] : [`“${found}”: ${instead}`];
  });
}
