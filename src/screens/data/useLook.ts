import { useState } from "react";
import type { Problem } from "#domain";
import { type Preview, type Progress, useErrand } from "#live";

/** A file that has been looked at, and what a preview says of it. */
export interface SeenFile {
  readonly name: string;
  readonly source: Blob;
  readonly preview: Preview;
}

export type LookStep =
  | { readonly kind: "waiting" }
  | { readonly kind: "reading"; readonly name: string }
  | { readonly kind: "refused"; readonly name: string; readonly problem: Problem }
  | { readonly kind: "seen"; readonly file: SeenFile };

export interface Looking {
  readonly step: LookStep;
  readonly progress: Progress | undefined;
  /** Reads a backup, off the page. Nothing is stored. */
  readonly look: (name: string, source: Blob) => void;
  readonly clear: () => void;
}

/** From a chosen file or pasted text to the preview of what is in it. */
export function useLook(): Looking {
  const [step, setStep] = useState<LookStep>({ kind: "waiting" });
  const { progress, send, stop } = useErrand();
  const look = async (name: string, source: Blob) => {
    setStep({ kind: "reading", name });
    const looked = await send("look", { source });
    if (looked === undefined)
      return setStep((now) => (now.kind === "reading" && now.name === name ? { kind: "waiting" } : now));
    return setStep(
      looked.ok
        ? { kind: "seen", file: { name, source, preview: looked.preview } }
        : { kind: "refused", name, problem: looked.problem },
    );
  };
  const clear = () => {
    stop();
    setStep({ kind: "waiting" });
  };
  return { step, progress, look: (name, source) => void look(name, source), clear };
}
