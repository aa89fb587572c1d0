import { parseSync } from "vite";

interface Node {
  readonly type: string;
  readonly [field: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && typeof (value as Node).type === "string";

/** Where a string is no sentence on screen: types, imports, what is compared with, names of attributes and classes. */
const silent = /^(TS|Import|ExportAll)/;
const attributes = /^(?:className|id|type|role|htmlFor|name|href|key|kind|variant|size|tone|data-.*)$/;

/**
 * The words of a source that may come on screen: text between tags, string literals with more than one word, and
 * templates, in which each value stands as "…". Comments, types and comparisons are none.
 * @param name of the file, for its ending
 */
export function sentencesOf(name: string, text: string): string[] {
  const found: string[] = [];
  walk(parseSync(name, text).program as unknown as Node, undefined, false, found);
  return found;
}

function walk(node: Node, parent: Node | undefined, isInTag: boolean, found: string[]): void {
  if (silent.test(node.type) && node.type !== "TSAsExpression" && node.type !== "TSSatisfiesExpression")
    return;
  if (node.type === "JSXAttribute" && attributes.test((node["name"] as Node)["name"] as string)) return;
  const said = wordsIn(node, parent, isInTag);
  if (said !== undefined) found.push(said);
  for (const [field, value] of Object.entries(node)) {
    if (field === "key" && node["computed"] !== true) continue;
    for (const child of Array.isArray(value) ? value : [value])
      if (isNode(child)) walk(child, node, isInTag || node.type === "JSXExpressionContainer", found);
  }
}

function wordsIn(node: Node, parent: Node | undefined, isInTag: boolean): string | undefined {
  if (node.type === "JSXText") return tidy(node["value"] as string);
  if (node.type === "TemplateLiteral")
    return tidy(
      (node["quasis"] as readonly { readonly value: { readonly cooked: string } }[])
        .map(({ value }) => value.cooked)
        .join("…"),
    );
  if (node.type !== "Literal" || typeof node["value"] !== "string") return undefined;
  if (
    parent?.type === "BinaryExpression" ||
    parent?.type === "SwitchCase" ||
    parent?.type === "MemberExpression"
  )
    return undefined;
  return isShown(node["value"], parent, isInTag) ? tidy(node["value"]) : undefined;
}

/** A text of one word is shown where it stands in a tag or as an attribute of one; a kind (`because`, `kind`) is none. */
function isShown(value: string, parent: Node | undefined, isInTag: boolean): boolean {
  const field =
    parent?.type === "Property" ? ((parent["key"] as Node)["name"] as string | undefined) : undefined;
  if (field === "kind" || field === "because" || field === "of" || field === "id" || field === "why")
    return false;
  const isChosen =
    isInTag && (parent?.type === "ConditionalExpression" || parent?.type === "LogicalExpression");
  return (
    / /.test(value.trim()) || isChosen || /^JSX(?:Attribute|ExpressionContainer)$/.test(parent?.type ?? "")
  );
}

const tidy = (text: string) => text.replace(/\s+/g, " ").trim();
