import { torqueOfCaution } from "#physics";
import { asSentence, inWords } from "./counted.ts";

/** Cautions in plain words; each stands where it belongs, and all together in Data. */
export const cautions = {
  wheel: `Wheel bases from about ${torqueOfCaution} N·m can injure fingers, wrists and thumbs. Keep your thumbs outside the spokes and the stop button in reach, raise the gain in small steps, keep children away, and follow the maker's manual. The ${torqueOfCaution} N·m are common practice, without a source.`,
  health:
    "Stop at nausea, headache, eye strain or numb hands, and take a break every hour. A wrong field of view makes sickness more likely. With photosensitive epilepsy ask a doctor first, and follow the makers' manuals.",
  simulatorOnly:
    "Lap times here are for simulators. They say nothing about driving on a road or a real circuit: there local law, the circuit's rules and licensed instruction decide.",
} as const;

/** The same as a line each, for who has read them. */
export const cautionLines: { readonly [C in keyof typeof cautions]: string } = {
  wheel: "strong wheels can injure hands.",
  health: "stop at nausea, headache or numb hands.",
  simulatorOnly: "lap times are for simulators only.",
};

/**
 * Asks for a break, once an hour.
 * @example sayBreakDue(2) // "Two hours at the wheel: time for a break."
 */
export function sayBreakDue(hours: number): string {
  const long = hours === 1 ? "An hour" : `${asSentence(inWords(hours))} hours`;
  return `${long} at the wheel: time for a break.`;
}
