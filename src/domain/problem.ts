/** What is wrong with something typed: never thrown, always shown, the text stays where it is. */
export interface Problem {
  /** First position in the text that the problem is about, in UTF-16 units. */
  readonly at: number;
  /** Length of the place; 0 when something is missing there. */
  readonly length: number;
  /** What is wrong, naming the input: "Seconds go up to 59: 75 is too many". */
  readonly wrong: string;
  /** What would be right: "Write 2:15.000 if you mean two minutes fifteen". */
  readonly right: string;
  /** What may have been meant: texts for the place, each of which is read there. Absent where nothing is known of it. */
  readonly choices?: readonly string[];
}

/** The outcome of reading something typed. */
export type Reading<T> = ({ readonly ok: true } & T) | { readonly ok: false; readonly problem: Problem };

/** What is wrong with what stands in a field: one sentence, or what is wrong and what would be right. */
export type FieldProblem = string | Pick<Problem, "wrong" | "right">;

/** What the texts of a form mean: a value to do something with, or what is wrong, by the field it is wrong in. */
export type FormReading<V, F extends string> =
  | { readonly ok: true; readonly value: V }
  | { readonly ok: false; readonly problems: { readonly [K in F]?: FieldProblem | undefined } };
