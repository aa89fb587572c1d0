import { preferences, setPreferences } from "#db";
import type { Preferences } from "#domain";
import { useRows, useWrite } from "#live";
import { useAddress } from "#state/address.ts";
import { type Theme, useDevice } from "#state/device.ts";
import { Choice } from "#ui/Choice.tsx";
import { Disclosure } from "#ui/Disclosure.tsx";
import { Part } from "#ui/Part.tsx";
import { Select } from "#ui/Select.tsx";
import { MarginField } from "./MarginField.tsx";
import styles from "./PreferencesPart.module.css";

const asOptions = <T extends string>(words: Readonly<Record<T, string>>) =>
  (Object.keys(words) as T[]).map((value) => ({ value, label: words[value] }));
const themes = asOptions<Theme>({ system: "as the system", light: "light", dark: "dark" });
const pads = asOptions({ auto: "on touch screens", shown: "shown", hidden: "hidden" });
const digitWays = asOptions({ caught: "go to the entry line", left: "are let be" });
const decimals = asOptions<"1" | "2" | "3">({ 1: "tenths", 2: "hundredths", 3: "thousandths" });
const references = asOptions({ lap: "the lap before", pb: "the PB", target: "the target" });
const settling = asOptions<"0" | "1" | "2" | "3">({ 0: "none", 1: "1", 2: "2", 3: "3" });
const hours = Array.from({ length: 24 }, (_, hour) => ({
  value: String(hour),
  label: `${String(hour).padStart(2, "0")}:00`,
}));

/** The driver's choices, folded, each stored as it is made: some for this device, the others for the open logbook. */
export function PreferencesPart() {
  const { theme, pad, digits, change, isStored } = useDevice();
  const address = useAddress();
  const isAskedFor = address.place === "data" && address.part === "preferences";
  const chosen = useRows(preferences, []);
  const write = useWrite();
  const choose = (patch: Parameters<typeof setPreferences>[1]) =>
    write((book) => setPreferences(book, patch));
  return (
    <Part title="Preferences" ruled aside="stored at once">
      <Disclosure title="Theme, pad, decimals, when a day begins and more" startOpen={isAskedFor}>
        <div className={styles["list"]}>
          <Choice
            size="between"
            label="Theme"
            value={theme}
            options={themes}
            onChange={(to) => change({ theme: to })}
          />
          <Choice
            size="between"
            label="Pad of keys under the entry line"
            value={pad}
            options={pads}
            onChange={(to) => change({ pad: to })}
            hint={
              isStored
                ? "Theme, pad and digits are for this device."
                : "This browser lets the page keep no choices: theme, pad and digits hold until it is closed."
            }
          />
          <Choice
            size="between"
            label="Digits typed outside any field on Log"
            value={digits}
            options={digitWays}
            onChange={(to) => change({ digits: to })}
          />
          {chosen && <OfTheLogbook chosen={chosen} choose={choose} />}
        </div>
      </Disclosure>
    </Part>
  );
}

interface OfTheLogbookProps {
  readonly chosen: Preferences;
  readonly choose: (patch: Parameters<typeof setPreferences>[1]) => Promise<unknown>;
}

function OfTheLogbook({ chosen, choose }: OfTheLogbookProps) {
  return (
    <>
      <Choice
        size="between"
        label="The simulator shows times to"
        value={String(chosen.displayDecimals) as "1" | "2" | "3"}
        options={decimals}
        onChange={(to) => choose({ displayDecimals: Number(to) as Preferences["displayDecimals"] })}
        hint="For times typed as digits only. The rest of the preferences belong to the open logbook."
      />
      <Choice
        size="between"
        label="+0.6 is measured from"
        value={chosen.relativeTo}
        options={references}
        onChange={(relativeTo) => choose({ relativeTo })}
      />
      <Choice
        size="between"
        label="First laps of a run that do not count for the pace"
        value={String(chosen.settlingLaps) as "0" | "1" | "2" | "3"}
        options={settling}
        onChange={(to) => choose({ settlingLaps: Number(to) as Preferences["settlingLaps"] })}
      />
      <div className={styles["short"]}>
        <Select
          label="A day begins at"
          value={String(chosen.dayStartsAt)}
          options={hours}
          onChange={(to) => choose({ dayStartsAt: Number(to) })}
          hint="Laps after midnight, before this hour, belong to the evening. For sessions begun from now on."
        />
      </div>
      <div className={styles["short"]}>
        <MarginField
          percent={chosen.marginPercent}
          onPercent={(marginPercent) => choose({ marginPercent })}
        />
      </div>
    </>
  );
}
