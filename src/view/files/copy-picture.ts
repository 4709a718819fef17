import { say } from "../../words/say";

/** Dots for each px of the drawing, so that it prints sharp. */
const sharpness = 2;

/** A drawing as an image of dots. @throws Error when the browser cannot draw it. */
async function asImage(svg: string): Promise<Blob> {
  const image = new Image();
  // From a data address: the page's content policy allows no other for what is made here.
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  canvas.width = image.naturalWidth * sharpness;
  canvas.height = image.naturalHeight * sharpness;
  const context = canvas.getContext("2d");
  if (context) {
    // On a ground of its own: its ink is dark, and the place where it is put may be as well.
    context.fillStyle = "#ffffff";
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.scale(sharpness, sharpness);
    context.drawImage(image, 0, 0);
  }
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/png"));
  if (!context || !blob) throw new Error(say`the picture could not be drawn`);
  return blob;
}

/** Puts a drawing on the clipboard, as programs for texts and mails take it. @throws Error when it may not be. */
export const copyPicture = (svg: string): Promise<void> =>
  // The image is promised, not awaited: some browsers let only the press itself write to the clipboard.
  navigator.clipboard.write([new ClipboardItem({ "image/png": asImage(svg) })]);
