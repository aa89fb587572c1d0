import { Part } from "#ui/Part.tsx";
import { cautions } from "#words";

/** All cautions in one place; each stands also where it belongs. */
export function CautionsPart() {
  return (
    <Part title="Cautions" ruled>
      {Object.values(cautions).map((caution) => (
        <p key={caution}>{caution}</p>
      ))}
    </Part>
  );
}
