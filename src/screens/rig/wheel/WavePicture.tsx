import { ForceWave } from "#charts/wave/ForceWave.tsx";
import { forceSketch, shareOverLimit } from "#physics";
import { Part } from "#ui/Part.tsx";
import { gainDigits, waveIsASketch, waveSays } from "#words";
import { forceSeen, type GainValues, type GainWay } from "./gainSum.ts";
import styles from "./Wheel.module.css";

interface WavePictureProps {
  readonly way: GainWay;
  readonly values: GainValues;
}

/** What the limit does to a turn at the gain now, and at the gain that is to be stored. */
export function WavePicture({ way, values }: WavePictureProps) {
  const { gain = 0, chosen = 0 } = values;
  const seen = forceSeen(way, values);
  if (seen === undefined || gain <= 0) return null;
  const forces = forceSketch(seen);
  const at = (percent: number, name: string) => {
    const said = `${gainDigits(percent)} %`;
    const scaled = forces.map((force) => (force * percent) / gain);
    const share = shareOverLimit(scaled);
    return { title: `${name} ${said}`, forces: scaled, said, share, label: waveSays([said], share) };
  };
  const waves = [at(gain, "now"), ...(chosen > 0 && chosen !== gain ? [at(chosen, "new")] : [])];
  return (
    <Part title="What the limit does to a turn" level={3}>
      <ForceWave waves={waves} />
      {sentences(waves).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p className={styles["soft"]}>{waveIsASketch}</p>
    </Part>
  );
}

interface Said {
  readonly said: string;
  readonly share: number;
  readonly label: string;
}

/** One sentence where the same is true at both gains. */
function sentences(waves: readonly Said[]): readonly string[] {
  const whole = waves.filter(({ share }) => share === 0);
  const cut = waves.filter(({ share }) => share > 0).map(({ label }) => label);
  return whole.length === 0
    ? cut
    : [
        ...cut,
        waveSays(
          whole.map(({ said }) => said),
          0,
        ),
      ];
}
