import type { AsideLinkFault, NamedChoice } from "#db";
import type { FieldProblem } from "#domain";
import { Select } from "#ui/Select.tsx";

interface AsideLinkProps {
  readonly link: NonNullable<AsideLinkFault["link"]>;
  readonly isNamedAside: boolean;
  readonly choices: readonly NamedChoice[];
  /** The id chosen, empty while none is. */
  readonly value: string;
  readonly onChange: (id: string) => void;
  readonly problem: FieldProblem | undefined;
}

/** What a row set aside belongs to, chosen by name; where that is set aside too, the word that it comes first. */
export function AsideLink({ link, isNamedAside, choices, value, onChange, problem }: AsideLinkProps) {
  const { word } = link;
  if (isNamedAside)
    return <p>Its {word} is set aside too. Put that back first, and this comes back with it.</p>;
  if (choices.length === 0) return <p>There is no {word} here to choose in its place.</p>;
  return (
    <Select
      label={`Its ${word}`}
      value={value}
      options={[
        { value: "", label: `Choose its ${word}` },
        ...choices.map(({ id, name }) => ({ value: id, label: name })),
      ]}
      onChange={onChange}
      problem={problem}
    />
  );
}
