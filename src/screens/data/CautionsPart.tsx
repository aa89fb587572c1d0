import { useCautionRead } from "#state/cautionsRead.ts";
import { Caution } from "#ui/Caution.tsx";
import { Part } from "#ui/Part.tsx";
import { cautionLines, cautions } from "#words";

const names = Object.keys(cautions) as (keyof typeof cautions)[];

/** All cautions in one place; each stands also where it belongs. */
export function CautionsPart() {
  return (
    <Part title="Cautions" ruled>
      {names.map((name) => (
        <One key={name} name={name} />
      ))}
    </Part>
  );
}

function One({ name }: { readonly name: keyof typeof cautions }) {
  return (
    <Caution line={cautionLines[name]} {...useCautionRead(name)}>
      {cautions[name]}
    </Caution>
  );
}
