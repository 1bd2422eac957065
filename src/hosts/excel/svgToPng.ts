/** Drawn finer than the screen so that it prints well. */
const SCALE = 3;

/** An SVG drawing as a PNG in base64, drawn by the page itself: nothing leaves the machine. Sizes in pixels. */
export async function svgToPng(svg: string, { width, height }: { width: number; height: number }): Promise<string> {
  const image = new Image(width * SCALE, height * SCALE);
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  canvas.width = width * SCALE;
  canvas.height = height * SCALE;
  canvas.getContext("2d")!.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas.toDataURL("image/png").replace("data:image/png;base64,", "");
}
