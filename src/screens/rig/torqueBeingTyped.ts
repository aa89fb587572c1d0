import { readMeasure } from "#entry";
import { rigFields } from "./rigFields.ts";
import { type RigTexts, textKey } from "./rigTexts.ts";

/** The torque of the wheel, N·m, as far as it can be read from a form that is still being filled in. */
export function torqueBeingTyped(texts: RigTexts): number | undefined {
  for (const field of rigFields) {
    if (field.part !== "wheel" || field.kind !== "measure" || field.key !== "torque") continue;
    const reading = readMeasure(texts[textKey(field)] ?? "", field.measure);
    return reading.ok ? reading.value : undefined;
  }
  return undefined;
}
