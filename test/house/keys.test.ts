import { expect, test } from "vitest";
import { keyHandlers, unshielded } from "./keys.ts";
import { readSources } from "./sources.ts";

const sources = readSources("src");
const tree = (text: string) => [{ path: "screens/log/A.tsx", text, imports: [] }];

test("no key handler goes without the shield of compositions", () => {
  expect(keyHandlers(sources).length).toBeGreaterThan(8);
  expect(unshielded(sources)).toEqual([]);
});

test("the shield stands before anything is drawn, and nothing is drawn beside it", () => {
  const drawing = sources.filter(({ text }) => /\b(createRoot|hydrateRoot)\(/.test(text));
  expect(drawing.map(({ path }) => path)).toEqual(["main.tsx"]);
  const [main] = drawing;
  const shield = main?.text.indexOf("\nshieldComposition(window);") ?? -1;
  expect(shield).toBeGreaterThan(0);
  expect(shield).toBeLessThan(main?.text.indexOf("createRoot(root)") ?? 0);
});

test.each([
  'window.addEventListener("keydown", act, true);',
  'addEventListener("keyup", act, { capture: true });',
  "document.addEventListener(type, act);",
  "field.onkeydown = act;",
  "const isMine = !event.nativeEvent.isComposing;",
  "if (event.keyCode === 13) act();",
])("a handler that goes without is found: %s", (line) => {
  expect(unshielded(tree(line))).toHaveLength(1);
});

test.each([
  'const a = <input onKeyDown={(event) => event.key === "Enter" && act()} />;',
  "const a = <form onKeyUpCapture={act} />;",
  'window.addEventListener("keydown", act);',
])("a handler behind the shield is known and let through: %s", (line) => {
  expect(keyHandlers(tree(line))).toHaveLength(1);
  expect(unshielded(tree(line))).toEqual([]);
});
