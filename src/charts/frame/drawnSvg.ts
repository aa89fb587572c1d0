const space = "http://www.w3.org/2000/svg";
const properties = [
  ...["fill", "fill-opacity", "stroke", "stroke-width", "stroke-opacity", "stroke-dasharray"],
  ...["stroke-linecap", "stroke-linejoin", "opacity", "visibility", "display"],
  ...["font-size", "font-weight", "text-anchor", "dominant-baseline"],
];
const fonts = '"Source Sans 3", "Segoe UI", Roboto, "Helvetica Neue", Arial, sans-serif';
const margin = 16;

/** What is written around a chart when it leaves the page. */
export interface DrawingWords {
  readonly title: string;
  readonly reading: string;
  /** At the foot: the date the figures are of. */
  readonly foot: string;
}

/** A chart as a picture of its own. */
export interface Drawing {
  readonly text: string;
  readonly width: number;
  readonly height: number;
}

/**
 * The chart with its words as an SVG file that needs no style sheet: colours and fonts as they are on screen are
 * written into a copy. All words enter as text nodes, so markup in a name stays the text it is.
 */
export function drawnSvg(chart: SVGSVGElement, words: DrawingWords): Drawing {
  const { width: chartWidth, height: chartHeight } = sizeOf(chart);
  const width = chartWidth + 2 * margin;
  const page = getComputedStyle(chart.parentElement ?? chart);
  const ink = page.color || "#000";
  const sheet = element("svg", { xmlns: space, width, "font-family": fonts });
  sheet.append(worded("title", words.title), worded("desc", words.reading));
  const paper = element("rect", { width, fill: paperBehind(chart) });
  sheet.append(paper);

  let y = margin;
  const write = (text: string, size: number, weight: number) => {
    for (const line of wrapped(text, (width - 2 * margin) / (size * 0.5))) {
      y += size * 1.3;
      sheet.append(
        worded("text", line, { x: margin, y, "font-size": size, "font-weight": weight, fill: ink }),
      );
    }
  };
  write(words.title, 20, 650);
  write(words.reading, 14, 400);
  const copy = styledCopy(chart);
  copy.setAttribute("x", String(margin));
  copy.setAttribute("y", String(y + 8));
  sheet.append(copy);
  y += 8 + chartHeight;
  write(words.foot, 12, 400);

  const height = Math.ceil(y + margin);
  sheet.setAttribute("height", String(height));
  sheet.setAttribute("viewBox", `0 0 ${width} ${height}`);
  paper.setAttribute("height", String(height));
  return { text: new XMLSerializer().serializeToString(sheet), width, height };
}

function sizeOf(chart: SVGSVGElement): { width: number; height: number } {
  const read = (name: string) => Number(chart.getAttribute(name)) || 0;
  return { width: read("width"), height: read("height") };
}

function element(name: string, attributes: Record<string, string | number>): SVGElement {
  const made = document.createElementNS(space, name);
  for (const [key, value] of Object.entries(attributes)) {
    if (key !== "xmlns") made.setAttribute(key, String(value));
  }
  return made;
}

function worded(name: string, text: string, attributes: Record<string, string | number> = {}): SVGElement {
  const made = element(name, attributes);
  made.textContent = text;
  return made;
}

/** The first opaque ground behind the chart. */
function paperBehind(chart: Element): string {
  for (let box: Element | null = chart; box !== null; box = box.parentElement) {
    const ground = getComputedStyle(box).backgroundColor;
    if (ground !== "" && ground !== "transparent" && ground !== "rgba(0, 0, 0, 0)") return ground;
  }
  return "#fff";
}

function styledCopy(chart: SVGSVGElement): SVGSVGElement {
  const copy = chart.cloneNode(true) as SVGSVGElement;
  const originals = [chart, ...chart.querySelectorAll("*")];
  [copy, ...copy.querySelectorAll("*")].forEach((twin, index) => {
    const original = originals[index];
    if (original === undefined) return;
    const style = getComputedStyle(original);
    for (const { name } of [...twin.attributes]) {
      if (/^(class|style|tabindex|role|aria-.*)$/.test(name)) twin.removeAttribute(name);
    }
    for (const property of properties) {
      const value = style.getPropertyValue(property);
      if (value !== "") twin.setAttribute(property, value);
    }
  });
  for (const passing of copy.querySelectorAll("[data-passing]")) passing.remove();
  return copy;
}

/** Breaks a sentence at spaces into lines of at most so many signs. */
function wrapped(text: string, most: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (longer.length > most && line !== "") {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line];
}
