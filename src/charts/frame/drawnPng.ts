import type { Drawing } from "./drawnSvg.ts";

const dotsPerPixel = 2;

/**
 * A drawing as a PNG picture, two dots a pixel.
 * @throws Error when the browser cannot draw it
 */
export async function drawnPng(drawing: Drawing): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([drawing.text], { type: "image/svg+xml" }));
  try {
    const image = new Image(drawing.width, drawing.height);
    image.src = address;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = drawing.width * dotsPerPixel;
    canvas.height = drawing.height * dotsPerPixel;
    const pen = canvas.getContext("2d");
    if (pen === null) throw new Error("this browser offers no canvas");
    pen.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) => {
      canvas.toBlob((blob) =>
        blob === null ? reject(new Error("the canvas gave no picture")) : resolve(blob),
      );
    });
  } finally {
    URL.revokeObjectURL(address);
  }
}
