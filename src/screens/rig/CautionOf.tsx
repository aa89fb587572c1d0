import { torqueOfCaution } from "#physics";
import { useCautionRead } from "#state/cautionsRead.ts";
import { Caution } from "#ui/Caution.tsx";
import { cautionLines, cautions } from "#words";
import type { RigPart } from "./rigFields.ts";

interface CautionOfProps {
  readonly part: RigPart;
  /** Torque of the wheel, N·m; undefined where it is not known, which is no reason to think it weak. */
  readonly torque: number | undefined;
}

/** The caution that belongs to a part of the rig. That of a strong wheel stays in full, however often it was read. */
export function CautionOf({ part, torque }: CautionOfProps) {
  const name = part === "wheel" ? "wheel" : "health";
  const { isRead, onRead } = useCautionRead(name);
  if (part !== "wheel" && part !== "view") return null;
  const stays = name === "wheel" && (torque === undefined || torque >= torqueOfCaution);
  return (
    <Caution line={cautionLines[name]} isRead={isRead} onRead={stays ? undefined : onRead}>
      {cautions[name]}
    </Caution>
  );
}
