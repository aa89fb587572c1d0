import { parseSync, Visitor } from "vite";
import type { Source } from "./sources.ts";

const shield = "ui/shieldComposition.ts";
const isKey = (name: string) => /^key(down|up|press)$/i.test(name);

/** Places that hear of keys: React's attributes, listeners of the page, and the old properties of elements. */
export function keyHandlers(sources: readonly Source[]): { readonly path: string; readonly where: string }[] {
  return sources.flatMap(({ path, text }) => {
    const found: { path: string; where: string }[] = [];
    const note = (start: number) => found.push({ path, where: lineAt(text, start) });
    new Visitor({
      JSXAttribute: ({ name, start }) => {
        if (name.type === "JSXIdentifier" && /^onKey(Down|Up|Press)/.test(name.name)) note(start);
      },
      CallExpression: ({ callee, arguments: [type], start }) => {
        if (nameOf(callee) !== "addEventListener" || type?.type !== "Literal") return;
        if (isKey(String(type.value))) note(start);
      },
    }).visit(parseSync(path, text).program);
    return found;
  });
}

/**
 * One sentence for each handler that a key of a composition could reach. The shield stands on the window and hears of
 * every key first; past it comes only who listens on the way down too, or under a name that cannot be read here.
 */
export function unshielded(sources: readonly Source[]): string[] {
  return sources.flatMap(({ path, text }) => {
    if (path === shield) return [];
    const found: string[] = [];
    const note = (start: number, why: string) => found.push(`${path}: ${lineAt(text, start)}: ${why}`);
    new Visitor({
      CallExpression: ({ callee, arguments: [type, , options], start }) => {
        if (nameOf(callee) !== "addEventListener") return;
        if (type?.type !== "Literal") note(start, "name what is listened to, so that keys can be told");
        else if (isKey(String(type.value)) && options !== undefined)
          note(start, "keys are listened to on their way up, behind the shield");
      },
      AssignmentExpression: ({ left, start }) => {
        if (/^onkey/.test(nameOf(left) ?? "")) note(start, "keys are listened to by addEventListener");
      },
      MemberExpression: ({ property, start }) => {
        if (property.type === "Identifier" && /^(isComposing|keyCode|which)$/.test(property.name))
          note(start, "the shield knows the keys of a composition, and nobody else has to");
      },
    }).visit(parseSync(path, text).program);
    return found;
  });
}

/** "addEventListener" of `window.addEventListener` and of a bare `addEventListener`. */
function nameOf(node: { readonly type: string }): string | undefined {
  if (node.type === "Identifier" && "name" in node) return String(node.name);
  if (node.type !== "MemberExpression" || !("property" in node)) return undefined;
  return nameOf(node.property as { readonly type: string });
}

const lineAt = (text: string, start: number) => (text.slice(start).split("\n")[0] ?? "").trim();
