import { useId } from "react";
import { useRoom } from "#charts/frame/useRoom.ts";
import { Button } from "#ui/Button.tsx";
import { sayLength } from "#words";
import styles from "./ScreenSum.module.css";
import { type SumTexts, textOf } from "./sumTexts.ts";

interface ThisScreenProps {
  readonly texts: SumTexts;
  readonly onChange: (texts: SumTexts) => void;
}

/** A card as banks give out: ISO/IEC 7810, format ID-1, mm. */
const card = { width: 85.6, height: 53.98 } as const;
/** An inch has 96 CSS px (CSS Values and Units, absolute lengths): how large a card is drawn at first, px. */
const asCssHasIt = (card.width / 25.4) * 96;
const range = { least: 150, most: 1000 } as const;

/** A card-shaped outline that is made as large as a real card: from it follows how large this screen's picture is. */
export function ThisScreen({ texts, onChange }: ThisScreenProps) {
  const { box, square, room } = useRoom();
  const id = useId();
  const wide = Number(texts.card) || asCssHasIt;
  const perMetre = (wide / card.width) * 1000;
  // On a telephone a card has no room across.
  const isUpright = wide > room.width;
  const high = (wide * card.height) / card.width;
  const { width, height } = window.screen;
  const picture = { width: width / perMetre, height: height / perMetre };
  const resize = (to: number) =>
    onChange({ ...texts, card: String(Math.min(range.most, Math.max(range.least, Math.round(to * 2) / 2))) });
  const take = () =>
    onChange({
      ...texts,
      by: "sides",
      width: textOf(picture.width, "width", texts.unit),
      height: textOf(picture.height, "height", texts.unit),
      pixelsAcross: String(Math.round(width * window.devicePixelRatio)),
    });
  return (
    <div ref={box} className={styles["true"]}>
      <span ref={square} className={styles["square"]} />
      <p>
        Hold a bank card against the glass and make the outline as large as it is. It measures the screen that
        this page stands on, so do it on the screen of the rig, the browser's zoom at 100 %.
      </p>
      <div
        className={styles["card"]}
        style={{ inlineSize: isUpright ? high : wide, blockSize: isUpright ? wide : high }}
      />
      <div className={styles["slide"]}>
        <Button size="between" aria-label="Smaller" onClick={() => resize(wide - 0.5)}>
          −
        </Button>
        <label htmlFor={id}>Size of the outline</label>
        <input
          id={id}
          type="range"
          min={range.least}
          max={range.most}
          step={0.5}
          value={wide}
          aria-valuetext={`card ${Math.round(wide)} pixels wide`}
          onChange={(event) => resize(Number(event.target.value))}
        />
        <Button size="between" aria-label="Larger" onClick={() => resize(wide + 0.5)}>
          +
        </Button>
      </div>
      <p>
        {texts.card === "" ? "As the browser has it, this screen would be" : "This screen:"}{" "}
        {sayLength(picture.width, texts.unit)} × {sayLength(picture.height, texts.unit)}.{" "}
        {texts.card !== "" && (
          <Button size="between" onClick={take}>
            Take these
          </Button>
        )}
      </p>
    </div>
  );
}
