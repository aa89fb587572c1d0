import { ForceWave } from "#charts/wave/ForceWave.tsx";
import { shareOverLimit } from "#physics";
import { Part } from "#ui/Part.tsx";
import { waveCompares, waveIsASketch, waveSays } from "#words";
import { forceSeen, type GainValues, type GainWay, turnAtGain } from "./gainSum.ts";
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
  const at = (percent: number, name: string) => {
    const { forces, time } = turnAtGain(seen, gain, percent);
    const turn = { gain: `${percent} %`, share: shareOverLimit(forces), ...(time && { time }) };
    return { turn, wave: { title: `${name} ${turn.gain}`, forces, label: waveSays(turn) } };
  };
  const now = at(gain, "now");
  const next = chosen > 0 && chosen !== gain ? at(chosen, "new") : undefined;
  const sentences = next ? waveCompares(now.turn, next.turn) : [waveSays(now.turn)];
  return (
    <Part title="What the limit does to a turn" level={3}>
      <ForceWave waves={next ? [now.wave, next.wave] : [now.wave]} />
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p className={styles["soft"]}>{waveIsASketch}</p>
    </Part>
  );
}
